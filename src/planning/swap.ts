import type { PlanRequest } from '#planning/practice-plan'
import { otherHalf, withMirroredHalves } from '#planning/problem-of-request'
import { restLimitKept } from '#planning/rest-limit-kept'
import { turnFrames } from '#planning/turn-frames'
import { checkPlan } from '#rotation/check-plan'
import { away, roleOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { type PlanValues, planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import type { RuleBreak } from '#rotation/rule'

/** Two players change places in a turn; players and turns by their place in their list, from 0. */
export type Swap = { readonly one: number; readonly other: number; readonly turn: number }

/** A timetable with two players' places changed, and what that costs. */
export type Swapped = {
  readonly plan: RotationPlan
  /** Turns in which they change: more than one where a keeper stays for the round, or a free game has two halves. */
  readonly turns: readonly number[]
  readonly before: PlanValues
  readonly after: PlanValues
  /** Rules it would break that it did not break before, the limit on waits left aside. */
  readonly broken: readonly RuleBreak[]
  /** The longest wait in turns, where it gets longer than the limit and than it was; null: it does not. */
  readonly waitBeyond: number | null
}

/** Null where there is nothing to change: one of the two is not there, or they have the same place. */
export function swapPlaces(
  problem: RotationProblem,
  of: { readonly plan: RotationPlan; readonly request: PlanRequest; readonly swap: Swap },
): Swapped | null {
  const { plan, swap } = of
  const { one, other } = swap
  const places = plan[swap.turn] ?? []
  const [mine, theirs] = [places[one] ?? away, places[other] ?? away]
  if (one === other || mine === away || theirs === away || mine === theirs) return null
  const turns = turnsOfSwap(problem, of)
  const changed = plan.map((own, turn) => (turns.includes(turn) ? exchanged(own, one, other) : own))
  const settled = withMirroredHalves(changed, { request: of.request, turns })
  const without = { ...problem, restLimit: null, fixed: fixedOf(problem, { ...of, turns }) }
  const [kept, then] = [restLimitKept(problem, plan), restLimitKept(problem, settled)]
  return {
    plan: settled,
    turns,
    before: planValues(problem, plan),
    after: planValues(problem, settled),
    broken: checkPlan(without, settled),
    waitBeyond: then !== null && then > (kept ?? 0) ? then : null,
  }
}

/** A keeper who stays hands over the whole of its duty, in the turns for which the other is there. */
function turnsOfSwap(
  problem: RotationProblem,
  { plan, request, swap }: { plan: RotationPlan; request: PlanRequest; swap: Swap },
): readonly number[] {
  const frames = turnFrames(request.design.rounds)
  const places = plan[swap.turn] ?? []
  const duty = [swap.one, swap.other].find((player) => roleOf(places[player] ?? away) === 'keep')
  const round = problem.turns[swap.turn]?.round
  const staying =
    duty !== undefined && problem.rounds[round ?? -1]?.keepersStay
      ? [...problem.turns.keys()].filter(
          (turn) =>
            problem.turns[turn]?.round === round &&
            plan[turn]?.[duty] === places[duty] &&
            [swap.one, swap.other].every((player) => (plan[turn]?.[player] ?? away) !== away),
        )
      : [swap.turn]
  const halves = staying.flatMap((turn) => otherHalf(frames, turn) ?? [])
  return [...new Set([...staying, ...halves])].sort((a, b) => a - b)
}

function exchanged(places: readonly number[], one: number, other: number): readonly number[] {
  return places.map((place, player) =>
    player === one ? (places[other] ?? place) : player === other ? (places[one] ?? place) : place,
  )
}

/** A swap by hand is not held up by how a free game stood before it; locks of the coach stay. */
function fixedOf(
  problem: RotationProblem,
  { request, turns }: { request: PlanRequest; turns: readonly number[] },
): RotationProblem['fixed'] {
  const locked = new Set(request.locks.map(({ turn, playerId }) => `${turn - 1} ${playerId}`))
  const frames = turnFrames(request.design.rounds)
  const isLocked = (turn: number, player: number) => {
    const id = problem.players[player]?.id
    const half = otherHalf(frames, turn)
    return locked.has(`${turn} ${id}`) || (half !== null && locked.has(`${half} ${id}`))
  }
  return problem.fixed.filter(({ turn, player }) => !turns.includes(turn) || isLocked(turn, player))
}
