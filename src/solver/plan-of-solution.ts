import type { MayTake } from '#rotation/may-take'
import type { RotationPlan } from '#rotation/plan'
import { seatRoles } from '#rotation/problem'
import { timetable } from '#rotation/timetable'
import type { RotationModel } from '#solver/rotation-model'

/** The timetable that a solution of a rotation model counts out; null where its counts cannot be laid out. */
export function planOfSolution(
  model: RotationModel,
  mayTake: MayTake,
  solution: { readonly values: Float64Array; readonly restLimit: number | null },
): RotationPlan | null {
  const { problem } = model
  const { values, restLimit } = solution
  const times = (column: number) => Math.round(values[column] ?? 0)
  const duties = problem.turns.map(() => new Map<number, number>())
  for (const { column, player, place, turns } of model.duties)
    if (times(column) === 1) for (const turn of turns) duties[turn]?.set(player, place)
  const groups = model.groups.map(({ turns }) => ({
    turns,
    counts: problem.players.map(() => 0).flatMap(() => [0, 0, 0, 0]),
  }))
  for (const { column, group, player, role } of model.shares) {
    const counts = groups[group]?.counts
    const index = player * 4 + seatRoles.indexOf(role)
    if (counts) counts[index] = (counts[index] ?? 0) + times(column)
  }
  for (const { turns, counts } of groups) {
    for (const [player, { present }] of problem.players.entries()) {
      if (!present[turns[0] ?? -1]) continue
      const kept = turns.filter((turn) => duties[turn]?.has(player)).length
      const seated = counts.slice(player * 4, player * 4 + 3).reduce((sum, count) => sum + count, 0)
      counts[player * 4 + 3] = turns.length - kept - seated
    }
  }
  return timetable(problem, mayTake, { groups, duties, restLimit })
}
