import type { Generated, Generation } from '#solver/generate-columns'

type Closed = readonly (readonly Uint8Array[])[]

/** A part of all plans: those that use no closed arc. */
export type BranchNode = {
  readonly closed: Closed | null
  readonly bound: number
  /** What the master says there; its values are those of its own columns. */
  readonly generated: Generated
}

/** What is decided next: whether a player begins a duty, or has a role, in a turn. */
type Choice = { readonly player: number; readonly turn: number; readonly kind: number; readonly start: number }

/**
 * The two halves of a node: with the most doubtful choice taken and with it refused. Duties go first, as most hangs on
 * them. Without a doubtful choice there is nothing to halve: then none come back.
 */
export function branchesOf(generation: Generation, node: BranchNode): readonly Closed[] {
  const choice = mostDoubtful(generation, node.generated.values)
  if (choice === null) return []
  return [closedWith(generation, node.closed, choice, true), closedWith(generation, node.closed, choice, false)]
}

function mostDoubtful({ rows, timetables }: Generation, values: Float64Array): Choice | null {
  const shares = new Map<string, { choice: Choice; share: number }>()
  timetables.forEach(({ player, arcs }, index) => {
    const value = values[index] ?? 0
    if (value < 1e-7) return
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
    if (share < 1e-6 || share > 1 - 1e-6) continue
    if (choice.kind === 4 && choice.start < 0) continue
    const doubt = Math.min(share, 1 - share) + (choice.start >= 0 ? 1 : 0)
    if (best === null || doubt > best.doubt + 1e-9) best = { choice, doubt }
  }
  return best?.choice ?? null
}

function closedWith({ rows }: Generation, before: Closed | null, choice: Choice, isTaken: boolean): Closed {
  const duty = choice.start < 0 ? undefined : rows.networks[choice.player]?.duties[choice.start]
  return rows.networks.map(({ player, arcs, duties }) =>
    arcs.map((all, turn) =>
      Uint8Array.from(all, ({ kind, starts }, arc) => {
        if (before?.[player]?.[turn]?.[arc]) return 1
        if (turn !== choice.turn) return 0
        const isOwn = player === choice.player
        const isChoice = kind === choice.kind && (starts[0] ?? -1) === choice.start
        if (isOwn) return isChoice === isTaken ? 0 : 1
        // Who begins a duty begins it alone.
        const isSame =
          duty !== undefined &&
          starts.some((start) => duties[start]?.chain === duty.chain && duties[start]?.from === duty.from)
        return isTaken && isSame ? 1 : 0
      }),
    ),
  )
}
