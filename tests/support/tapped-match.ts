import { defaultMarks } from '#lineup/default-marks'
import { placesOfFormat } from '#lineup/draft/places-of-format'
import { plainFormat } from '#lineup/draft/plain-format'
import { lineUpOf } from '#lineup/line-up-of-plan'
import type { MatchPlan, MatchPlanRequest } from '#lineup/match-plan'
import { matchPlanOf } from '#lineup/match-plan-of'
import { noRules } from '#lineup/problem'
import { problemOfMatch } from '#lineup/problem-of-match'
import { quickLineUp } from '#lineup/quick-line-up'
import { noWishes } from '#match/format/line-wish'
import type { MatchFormat } from '#match/format/match-format'
import { foldMatch, type MatchToFold } from '#touchline/fold-match'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchEvent } from '#touchline/match-pack'
import type { MatchState } from '#touchline/match-state'

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

export function planFor(request: MatchPlanRequest): MatchPlan {
  const problem = problemOfMatch(request)
  const plan = quickLineUp(problem, { seed: 1 })
  if (!plan) throw new Error('no line-up for this request')
  return matchPlanOf(request, lineUpOf(problem, plan), (id) => id)
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

/** Taps of one phone, each at so many seconds after the first kick-off. */
export function taps(...given: readonly (readonly [number, MatchDeed])[]): readonly MatchEvent[] {
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
export function kickOff(state: MatchState): MatchDeed {
  const next = state.nextKickOff
  if (!next) throw new Error('no kick-off is next')
  return { kind: 'kickOff', period: next.period, on: next.on }
}
