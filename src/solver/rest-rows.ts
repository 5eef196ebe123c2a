import { activeEntries, type RotationModel } from '#solver/rotation-model'

/** Longest stretches, in groups, over which the counting form of the rest limit is written down. */
const longestStretch = 3

/**
 * The rest limit in a rotation model. With groups of single turns it is exact: of every limit + 1 turns in a row a
 * player who is there for all does not rest in one. With larger groups it is what follows by counting: of n turns in a
 * row at least ⌊n ÷ (limit + 1)⌋.
 */
export function addRestRows(model: RotationModel, limit: number): void {
  const isSingle = model.groups.every(({ turns }) => turns.length === 1)
  for (const player of model.problem.players.keys()) {
    if (isSingle) addWindows(model, player, limit)
    else addStretches(model, player, limit)
  }
}

function isThroughout(model: RotationModel, player: number, first: number, last: number): boolean {
  const present = model.problem.players[player]?.present ?? []
  return present.slice(first, last + 1).every((isThere) => isThere)
}

function addWindows(model: RotationModel, player: number, limit: number): void {
  for (let first = 0; first + limit < model.groups.length; first += 1) {
    if (!isThroughout(model, player, first, first + limit)) continue
    const groups = Array.from({ length: limit + 1 }, (_, step) => first + step)
    const active = new Map(groups.flatMap((group) => activeEntries(model, player, group)))
    // One who keeps through several of these turns has one turn of not resting more than needed: each counts once.
    model.linear.addRow({ lower: 1 }, active)
  }
}

function addStretches(model: RotationModel, player: number, limit: number): void {
  const blocks = contiguousBlocks(model)
  for (let from = 0; from < blocks.length; from += 1) {
    for (let to = from; to < Math.min(blocks.length, from + longestStretch); to += 1) {
      const own = blocks.slice(from, to + 1)
      const first = own[0]?.first ?? 0
      const last = own.at(-1)?.last ?? 0
      const least = Math.floor((last - first + 1) / (limit + 1))
      if (least === 0 || !isThroughout(model, player, first, last)) continue
      const entries = own.flatMap(({ groups }) =>
        groups.flatMap((group) => activeEntries(model, player, group)),
      )
      model.linear.addRow({ lower: least }, entries)
    }
  }
}

type Block = { readonly first: number; readonly last: number; readonly groups: readonly number[] }

/** The turns cut into stretches that are made of whole groups, as short as can be, first to last. */
function contiguousBlocks(model: RotationModel): readonly Block[] {
  const groupOf = new Map(
    model.groups.flatMap(({ turns }, group) => turns.map((turn) => [turn, group] as const)),
  )
  const blocks: Block[] = []
  let first = 0
  let last = 0
  let groups = new Set<number>()
  for (let turn = 0; turn < model.problem.turns.length; turn += 1) {
    const group = groupOf.get(turn) ?? 0
    groups.add(group)
    last = Math.max(last, model.groups[group]?.turns.at(-1) ?? turn)
    if (turn < last) continue
    blocks.push({ first, last, groups: [...groups] })
    groups = new Set()
    first = turn + 1
    last = first
  }
  return blocks
}
