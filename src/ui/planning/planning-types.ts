import type { PlayerPair } from '#planning/player-pair'
import type { SeasonOfPlayer } from '#planning/season-gaps'
import type { Policy } from '#squad/policy'

/** A player as the planning page knows it. */
export type PlanningPlayer = {
  readonly id: string
  readonly name: string
  readonly keeps: boolean
  readonly isMember: boolean
  readonly season: { readonly practice: SeasonOfPlayer; readonly withMatches: SeasonOfPlayer }
}

export type PlanningPolicy = Pick<
  Policy,
  'toleranceSeconds' | 'toleranceShare' | 'restLimitTurns' | 'goalShareLimit'
>

export type PlanningPair = Pick<PlayerPair, 'id' | 'playerIds' | 'kind' | 'firstDay' | 'lastDay'>

export type NameOf = (playerId: string) => string
