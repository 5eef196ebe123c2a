import type { PlayerPair } from '#planning/player-pair'
import type { Policy } from '#squad/policy'

export type PlanningPolicy = Pick<
  Policy,
  'toleranceSeconds' | 'toleranceShare' | 'restLimitTurns' | 'goalShareLimit'
>

export type PlanningPair = Pick<PlayerPair, 'id' | 'playerIds' | 'kind' | 'firstDay' | 'lastDay'>

export type NameOf = (playerId: string) => string
