import { defaultMarks } from '#lineup/default-marks'
import { placesOfFormat } from '#lineup/draft/places-of-format'
import { plainFormat } from '#lineup/draft/plain-format'
import type { MatchPlan, MatchPlanRequest } from '#lineup/match-plan'
import { noRules } from '#lineup/problem'
import { noWishes } from '#match/format/line-wish'
import type { MatchFormat } from '#match/format/match-format'
import type { PlayerId } from '#squad/player'
import { foldMatch, type MatchToFold } from '#touchline/fold-match'
import type { MatchDeed, PlacedPlayer } from '#touchline/match-deed'
import type { MatchEvent } from '#touchline/match-pack'
import type { MatchState } from '#touchline/match-state'
import { planAtOnce } from './plan-at-once'

export const kickOffMs = Date.UTC(2026, 8, 12, 10)
const nobody = { playSeconds: 0, keepSeconds: 0, starts: 0 }

export function matchId(number: number): string {
  return `00000000-0000-4000-8000-${String(number).padStart(12, '0')}`
}

/** Seven a side, two halves of 25 minutes, half of its time promised to everyone. */
export const sevens: MatchFormat = {
  ...plainFormat,
  leastTime: { share: 0.5, periods: null, late: [], wherePossible: false },
}

/** A request for so many players, the first two of whom may keep; late ones by their place. */
export function requestOf(
  count: number,
  { format = sevens, late = {} }: { format?: MatchFormat; late?: Readonly<Record<number, number>> } = {},
): MatchPlanRequest {
  return {
    format,
    places: placesOfFormat(format),
    marks: defaultMarks(format, count),
    players: Array.from({ length: count }, (_, index) => ({
      playerId: matchId(index),
      keeps: index < 2,
      from: late[index] ?? 0,
      to: null,
      owed: nobody,
      wishes: noWishes,
      metSeconds: { back: 0, middle: 0, forward: 0 },
      playedToday: 0,
    })),
    rules: { ...noRules, keeperForPeriod: true },
    leastShare: format.leastTime.share,
    apart: [],
    together: [],
    locks: [],
  }
}

export function packOf(plan: MatchPlan, extra = 0): MatchToFold {
  const count = plan.players.length + extra
  return {
    plan,
    format: plan.format,
    players: Array.from({ length: count }, (_, index) => ({
      id: matchId(index),
      name: `Player ${index}`,
      keeps: index < 2,
    })),
  }
}

/** So many seconds after the first kick-off, this. */
export type Tap = readonly [second: number, deed: MatchDeed]

/** Taps of one phone. */
export function taps(...given: readonly Tap[]): readonly MatchEvent[] {
  return given.map(([second, deed], index) => ({
    id: `01990000-0000-7000-8000-${String(index).padStart(12, '0')}`,
    deviceId: '00000000-0000-4000-9000-000000000001',
    at: kickOffMs + second * 1000,
    deed,
  }))
}

export function stateAt(pack: MatchToFold, events: readonly MatchEvent[], second: number): MatchState {
  return foldMatch(pack, events, kickOffMs + second * 1000)
}

/** As the plan has them at the kick-off of a period. */
export function kickOff(state: MatchState): Extract<MatchDeed, { kind: 'kickOff' }> {
  const next = state.nextKickOff
  if (!next) throw new Error('no kick-off is next')
  return { kind: 'kickOff', period: next.period, on: next.on }
}

/** Whoever is in goal. */
export function inGoal({ on }: MatchState): PlayerId {
  return idOf(on.find(({ line }) => line === 'keeper'))
}

/** One who is on, out of goal. */
export function outOfGoal({ on }: MatchState): PlayerId {
  return idOf(on.find(({ line }) => line !== 'keeper'))
}

function idOf(placed: PlacedPlayer | undefined): PlayerId {
  if (!placed) throw new Error('nobody is there')
  return placed.playerId
}

/** So many are tapped as here before the match, in their order. */
export function cameBefore(count: number): readonly Tap[] {
  return Array.from({ length: count }, (_, index) => [
    index - 300,
    { kind: 'register', playerId: matchId(index), state: 'here' },
  ])
}

/** Ten for seven a side, as planned at once: read by most tests of a match, changed by none. */
export const planOfTen = planAtOnce(requestOf(10))
export const packOfTen = packOf(planOfTen)
export const firstOfTen = kickOff(foldMatch(packOfTen, []))

/** Half of a match is promised, where no format says otherwise. */
export const halfPromised = { policy: { leastMatchShare: 0.5 } } as const
