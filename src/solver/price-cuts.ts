import type { FairnessGoal } from '#solver/fairness-goal'
import type { Generation, PriceProof } from '#solver/generate-columns'
import { onDuty } from '#solver/player-network'
import { activeEntries, type RotationModel } from '#solver/rotation-model'
import type { TimetableRows } from '#solver/timetable-rows'

/**
 * Tells a model of single turns what the prices of timetables have shown: each player's cost is at least its part of
 * the bound and what its places earn by the prices; and places in closed arcs are taken by nobody. With these rows the
 * relaxed model is no weaker than the bound that they come from.
 */
export function addPriceCuts(
  model: RotationModel,
  goal: FairnessGoal,
  { generation, proof }: { readonly generation: Generation; readonly proof: PriceProof },
): void {
  const { rows } = generation
  for (const player of rows.problem.players.keys()) {
    const own = goal.costs[player]
    if (!own || own.entries.length === 0) continue
    const more = model.linear.addColumn({ cost: 1, upper: Number.POSITIVE_INFINITY, isWhole: false })
    const earned = earnings(model, rows, player, proof.prices)
    model.linear.addRow({ lower: (proof.byPlayer[player] ?? 0) - own.constant - 1e-6 }, [
      ...own.entries,
      [more, 1],
      ...earned.map(([column, value]) => [column, -value] as const),
    ])
  }
}

/** What each column of a player earns by the prices. */
function earnings(
  model: RotationModel,
  rows: TimetableRows,
  player: number,
  prices: Float64Array,
): readonly (readonly [number, number])[] {
  const network = rows.networks[player]
  const worth = (turn: number, kind: number, start: number | null) => {
    const index = (network?.arcs[turn] ?? []).findIndex(
      (arc) => arc.kind === kind && (start === null ? arc.starts.length === 0 : arc.starts.includes(start)),
    )
    const entries = rows.entries[player]?.[turn]?.[index] ?? []
    return entries.reduce((sum, [row, value]) => sum + value * (prices[row] as number), 0)
  }
  const shares = model.shares.flatMap(({ column, group, role, ...own }) => {
    if (own.player !== player) return []
    const turn = model.groups[group]?.turns[0] ?? 0
    const kind = role === 'attack' ? 0 : role === 'defend' ? 1 : 2
    return [[column, worth(turn, kind, null)] as const]
  })
  const duties = model.duties.flatMap((duty) => {
    if (duty.player !== player) return []
    const start = dutyIndex(rows, player, duty)
    const [first = 0, ...later] = duty.turns
    const value = later.reduce((sum, turn) => sum + worth(turn, onDuty, null), worth(first, onDuty, start))
    return [[duty.column, value] as const]
  })
  return [...shares, ...duties]
}

function dutyIndex(
  rows: TimetableRows,
  player: number,
  duty: { readonly place: number; readonly turns: readonly number[] },
): number {
  return (rows.networks[player]?.duties ?? []).findIndex(
    (own) => own.place === duty.place && own.turns[0] === duty.turns[0],
  )
}

/** Shuts the columns whose every arc is closed, and seats whoever may not rest any more. Returns how many are left. */
export function closePlaces(model: RotationModel, rows: TimetableRows, closed: readonly (readonly Uint8Array[])[]): number {
  const { linear } = model
  let open = 0
  const isOpen = (player: number, turn: number, test: (kind: number, starts: readonly number[]) => boolean) =>
    (rows.networks[player]?.arcs[turn] ?? []).some(
      ({ kind, starts }, arc) => test(kind, starts) && closed[player]?.[turn]?.[arc] === 0,
    )
  const settle = (column: number, stays: boolean) => {
    if (stays) open += 1
    else linear.upper[column] = 0
  }
  for (const { column, group, player, role } of model.shares) {
    const turn = model.groups[group]?.turns[0] ?? 0
    const wanted = role === 'attack' ? 0 : role === 'defend' ? 1 : 2
    settle(
      column,
      isOpen(player, turn, (kind) => kind === wanted),
    )
  }
  for (const duty of model.duties) {
    const start = dutyIndex(rows, duty.player, duty)
    settle(
      duty.column,
      isOpen(duty.player, duty.turns[0] ?? 0, (_, starts) => starts.includes(start)),
    )
  }
  model.groups.forEach(({ turns: [turn = 0] }, group) => {
    for (const [player, { present }] of rows.problem.players.entries())
      if (present[turn] && !isOpen(player, turn, (kind) => kind === 3))
        linear.addRow({ lower: 1 }, activeEntries(model, player, group))
  })
  return open
}
