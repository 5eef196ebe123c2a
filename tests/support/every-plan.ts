import { checkPlan } from '#rotation/check-plan'
import { away, resting, seatPlace } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { presentAt, type RotationProblem, seatRoles } from '#rotation/problem'

/** Every timetable of a small problem that keeps all rules with this rest limit, one after the other. */
export function* everyPlan(problem: RotationProblem, restLimit: number | null): Generator<RotationPlan> {
  const seatings = problem.turns.map((_, turn) => [...everySeating(problem, turn)])
  function* from(plan: RotationPlan): Generator<RotationPlan> {
    const begun = {
      ...problem,
      restLimit,
      turns: problem.turns.slice(0, plan.length),
      fixed: problem.fixed.filter(({ turn }) => turn < plan.length),
    }
    if (checkPlan(begun, plan).length > 0) return
    if (plan.length === problem.turns.length) {
      yield plan
      return
    }
    for (const seating of seatings[plan.length] ?? []) yield* from([...plan, seating])
  }
  yield* from([])
}

function* everySeating(problem: RotationProblem, turn: number): Generator<readonly number[]> {
  const seats = (problem.turns[turn]?.stations ?? []).flatMap((station, index) =>
    seatRoles.flatMap((role) => Array.from({ length: station[role] }, () => seatPlace(index, role))),
  )
  const present = presentAt(problem, turn)
  const slots = [...seats, ...Array.from({ length: present.length - seats.length }, () => resting)]
  const seen = new Set<string>()
  for (const order of everyOrder(slots)) {
    const key = order.join()
    if (seen.has(key)) continue
    seen.add(key)
    const places: number[] = problem.players.map(() => away)
    present.forEach((player, index) => {
      places[player] = order[index] ?? away
    })
    yield places
  }
}

function* everyOrder(items: readonly number[]): Generator<readonly number[]> {
  if (items.length <= 1) {
    yield items
    return
  }
  for (const [index, item] of items.entries())
    for (const rest of everyOrder(items.filter((_, other) => other !== index))) yield [item, ...rest]
}
