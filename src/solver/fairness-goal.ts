import { owedSeconds } from '#rotation/first-plan'
import { roleIndexOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { seatRoles } from '#rotation/problem'
import { attainableTotals } from '#solver/attainable'
import type { RotationModel } from '#solver/rotation-model'
import { addSquareCost } from '#solver/square-cost'

/** How far around what is owed and what a known plan gives the cost is exact, in turns of the longest kind. */
const windowTurns = 4
/** So few possible totals are all written down, wherever they lie. */
const sparsePoints = 40

/**
 * Gives a rotation model the goal of even shares: the sum over players and the four roles of (gap afterwards)², counted
 * in `unitSeconds`². `near`: a plan around whose totals the cost is exact.
 */
export function addFairnessGoal(model: RotationModel, near: RotationPlan): { readonly unitSeconds: number } {
  const { problem } = model
  const unitSeconds = Math.max(
    1,
    problem.turns.reduce((unit, { seconds }) => commonDivisor(unit, seconds), 0),
  )
  const owed = owedSeconds(problem)
  const margin = (windowTurns * Math.max(...problem.turns.map(({ seconds }) => seconds))) / unitSeconds
  for (const player of problem.players.keys()) {
    const live = problem.turns.reduce(
      (sum, turn, index) => sum + (problem.players[player]?.present[index] ? turn.seconds / unitSeconds : 0),
      0,
    )
    if (live === 0) continue
    const parts = seatRoles.map((role) => partsOfRole(model, { player, role, unitSeconds }))
    const allEntries = parts.flatMap(({ entries }) => entries)
    const all = [
      ...parts.map((part) => ({ ...part, constant: 0, attainable: attainableTotals(part.lengths) })),
      {
        entries: allEntries.map(([column, value]) => [column, -value] as const),
        constant: live,
        attainable: restTotals(model, { player, unitSeconds }),
      },
    ]
    all.forEach(({ entries, constant, attainable }, role) => {
      const target = (owed[player * 4 + role] as number) / unitSeconds
      const got = planTotal(model, near, { player, role }) / unitSeconds
      const isSparse = attainable.length <= sparsePoints
      const window = isSparse
        ? { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY }
        : { from: Math.min(target, got) - margin, to: Math.max(target, got) + margin }
      addSquareCost(model.linear, { entries, constant, target, attainable, window })
    })
  }
  return { unitSeconds }
}

type OwnRole = { readonly player: number; readonly role: string; readonly unitSeconds: number }

/** What makes a player's total of one role, and the lengths it is made of. */
function partsOfRole(model: RotationModel, { player, role, unitSeconds }: OwnRole) {
  const { problem, groups } = model
  const entries: [number, number][] = []
  const lengths: { length: number; most: number }[] = []
  for (const share of model.shares) {
    if (share.player !== player || share.role !== role) continue
    const turns = groups[share.group]?.turns ?? []
    const length = (problem.turns[turns[0] ?? 0]?.seconds ?? 0) / unitSeconds
    entries.push([share.column, length])
    lengths.push({ length, most: turns.length })
  }
  if (role !== 'keep') return { entries, lengths }
  for (const duty of model.duties) {
    if (duty.player !== player) continue
    const length =
      duty.turns.reduce((sum, turn) => sum + (problem.turns[turn]?.seconds ?? 0), 0) / unitSeconds
    entries.push([duty.column, length])
    lengths.push({ length, most: 1 })
  }
  return { entries, lengths }
}

function restTotals(model: RotationModel, own: Omit<OwnRole, 'role'>): readonly number[] {
  const { problem } = model
  const most = new Map<number, number>()
  problem.turns.forEach(({ seconds }, turn) => {
    if (problem.players[own.player]?.present[turn]) most.set(seconds, (most.get(seconds) ?? 0) + 1)
  })
  return attainableTotals(
    [...most].map(([length, count]) => ({ length: length / own.unitSeconds, most: count })),
  )
}

function planTotal(
  model: RotationModel,
  plan: RotationPlan,
  own: { readonly player: number; readonly role: number },
): number {
  return model.problem.turns.reduce((sum, { seconds }, turn) => {
    const place = plan[turn]?.[own.player] ?? -1
    return place >= 0 && roleIndexOf(place) === own.role ? sum + seconds : sum
  }, 0)
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b)
}
