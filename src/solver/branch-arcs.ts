import type { Generated } from '#solver/generate-columns'
import type { Generation, Part, TotalRange } from '#solver/generation'

/** A part of all plans, with what is known of it. */
export type BranchNode = {
  readonly part: Part
  readonly bound: number
  /** What the master says there; its values are those of its own columns. */
  readonly generated: Generated
}

/** What is decided next: whether a player begins a duty, or has a role, in a turn. */
type Choice = {
  readonly player: number
  readonly turn: number
  readonly kind: number
  readonly start: number
}

const hair = 1e-6

/**
 * The two halves of a node. Where the master mixes timetables of one player with different totals, the most mixed total
 * is cut in two: it costs most, and no exchange of like turns gets around it. Otherwise the most doubtful choice is
 * taken in one half and refused in the other. None come back where the master mixes nothing.
 */
export function branchesOf(generation: Generation, node: BranchNode): readonly Part[] {
  const { values } = node.generated
  const mixed = mostMixedTotal(generation, values)
  if (mixed !== null) return halvesByTotal(generation, node.part, mixed)
  const choice = mostDoubtful(generation, values)
  if (choice === null) return []
  return [true, false].map((isTaken) => closedWith(generation, node.part, choice, isTaken))
}

type MixedTotal = { readonly player: number; readonly role: number; readonly mean: number }

function mostMixedTotal({ rows, timetables }: Generation, values: Float64Array): MixedTotal | null {
  const sums = rows.networks.map(() => [0, 1, 2, 3].map(() => ({ weight: 0, first: 0, second: 0 })))
  timetables.forEach(({ player, totals }, index) => {
    const value = values[index] ?? 0
    if (value < hair) return
    totals.forEach((total, role) => {
      const own = sums[player]?.[role]
      if (!own) return
      own.weight += value
      own.first += value * total
      own.second += value * total ** 2
    })
  })
  let best: (MixedTotal & { readonly spread: number }) | null = null
  for (const [player, own] of sums.entries()) {
    for (const [role, { weight, first, second }] of own.entries()) {
      const mean = first / Math.max(weight, hair)
      const spread = second / Math.max(weight, hair) - mean ** 2
      if (spread > 1e-4 && spread > (best?.spread ?? 0) + hair) best = { player, role, mean, spread }
    }
  }
  return best
}

function halvesByTotal(
  { rows }: Generation,
  part: Part,
  { player, role, mean }: MixedTotal,
): readonly Part[] {
  const any: TotalRange = { least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY }
  const cut = Math.floor(mean + hair)
  const narrowed = (change: Partial<TotalRange>): Part => ({
    ...part,
    totals: rows.networks.map((network) => {
      const own = part.totals?.[network.player] ?? [any, any, any, any]
      if (network.player !== player) return own
      return own.map((range, index) =>
        index === role
          ? {
              least: Math.max(range.least, change.least ?? range.least),
              most: Math.min(range.most, change.most ?? range.most),
            }
          : range,
      )
    }),
  })
  return [narrowed({ most: cut }), narrowed({ least: cut + 1 })]
}

function mostDoubtful({ rows, timetables }: Generation, values: Float64Array): Choice | null {
  const shares = new Map<string, { choice: Choice; share: number }>()
  timetables.forEach(({ player, arcs }, index) => {
    const value = values[index] ?? 0
    if (value < hair) return
    arcs.forEach((arc, turn) => {
      const own = rows.networks[player]?.arcs[turn]?.[arc]
      if (!own || own.kind > 4) return
      const choice = { player, turn, kind: own.kind, start: own.starts[0] ?? -1 }
      const key = `${player} ${turn} ${own.kind} ${choice.start}`
      const known = shares.get(key) ?? { choice, share: 0 }
      shares.set(key, { choice, share: known.share + value })
    })
  })
  let best: { choice: Choice; doubt: number } | null = null
  for (const { choice, share } of shares.values()) {
    if (share < hair || share > 1 - hair) continue
    if (choice.kind === 4 && choice.start < 0) continue
    const doubt = Math.min(share, 1 - share) + (choice.start >= 0 ? 1 : 0)
    if (best === null || doubt > best.doubt + 1e-9) best = { choice, doubt }
  }
  return best?.choice ?? null
}

function closedWith({ rows }: Generation, part: Part, choice: Choice, isTaken: boolean): Part {
  const duty = choice.start < 0 ? undefined : rows.networks[choice.player]?.duties[choice.start]
  const closed = rows.networks.map(({ player, arcs, duties }) =>
    arcs.map((all, turn) =>
      Uint8Array.from(all, ({ kind, starts }, arc) => {
        if (part.closed?.[player]?.[turn]?.[arc]) return 1
        if (turn !== choice.turn) return 0
        const isChoice = kind === choice.kind && (starts[0] ?? -1) === choice.start
        if (player === choice.player) return isChoice === isTaken ? 0 : 1
        // Who begins a duty begins it alone.
        const isSame =
          duty !== undefined &&
          starts.some((start) => duties[start]?.chain === duty.chain && duties[start]?.from === duty.from)
        return isTaken && isSame ? 1 : 0
      }),
    ),
  )
  return { ...part, closed }
}
