import type { Seconds } from '#common/time'
import type { PlayerId } from '#squad/player'
import { changeOfPlan } from '#touchline/change-of-plan'
import type { PlacedPlayer } from '#touchline/match-deed'
import type { MatchState, NextKickOff } from '#touchline/match-state'
import type { MatchTimes } from '#touchline/match-times'
import { periodFrame } from '#touchline/period-frame'
import type { WalkedMatch } from '#touchline/walk-match'
import type { WalkedRegister } from '#touchline/walked-register'

/** Who is to be on at the next kick-off: as planned, or else as the last period ended. Null: one runs, or the match is over. */
export function nextKickOff(given: {
  readonly times: MatchTimes
  readonly walked: WalkedMatch
  readonly register: WalkedRegister
  readonly isAble: (id: PlayerId, due: Seconds) => boolean
  readonly keeps: (id: PlayerId) => boolean
  readonly sets: MatchState['sets']
  readonly format: MatchState['format']
}): NextKickOff | null {
  const { times, walked, register, isAble, keeps, sets, format } = given
  const last = times.periods.at(-1)
  if (times.endedAt !== null || (last && last.endedAt === null)) return null
  const period = (last?.period ?? -1) + 1
  const { start, isExtra } = periodFrame(format, period)
  const planned = sets.find((set) => set.period === period && set.second === 0)
  const before = lastOn(walked, last?.period)
  const able = (id: PlayerId) => (planned ? isAble(id, start) : register.isAble(id))
  const change = changeOfPlan(
    { on: planned?.on ?? before, before: null },
    { on: before, places: walked.places, isAble: able, keeps },
  )
  return { period, isExtra, on: change.after, missing: change.missing }
}

/** Who was on as a period ended. */
function lastOn({ spells }: WalkedMatch, period: number | undefined): readonly PlacedPlayer[] {
  const own = spells.filter((spell) => spell.period === period)
  const end = own.reduce((latest, { to }) => Math.max(latest, to ?? 0), 0)
  return own.filter(({ to }) => to === end).map(({ playerId, line }) => ({ playerId, line }))
}
