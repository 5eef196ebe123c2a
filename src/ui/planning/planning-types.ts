import type { PlayerAgreement } from '#planning/agreed-today'
import type { PlayerPair } from '#planning/player-pair'
import type { SeasonOfPlayer } from '#planning/season-gaps'
import type { Policy } from '#squad/policy'

/** A player as the planning page knows it. */
export type PlanningPlayer = {
  readonly id: string
  readonly name: string
  readonly keeps: boolean
  readonly isMember: boolean
  /** What was agreed and holds on the day of the practice. */
  readonly agreements: readonly PlayerAgreement[]
  readonly season: { readonly practice: SeasonOfPlayer; readonly withMatches: SeasonOfPlayer }
}

export type PlanningPolicy = Pick<
  Policy,
  'toleranceSeconds' | 'toleranceShare' | 'restLimitTurns' | 'goalShareLimit'
>

export type PlanningPair = Pick<PlayerPair, 'id' | 'playerIds' | 'kind' | 'firstDay' | 'lastDay'>

export type NameOf = (playerId: string) => string
