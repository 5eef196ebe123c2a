import { restLimitOf } from '#rotation/limits'
import { activeEntries, type RotationModel } from '#solver/rotation-model'
import { contiguousBlocks } from '#solver/turn-blocks'

/** Longest stretches, in groups, over which the counting form of the rest limit is written down. */
const longestStretch = 3

/**
 * The rest limit in a rotation model. With groups of single turns it is exact: of every limit + 1 turns in a row a
 * player who is there for all does not rest in one. With larger groups it is what follows by counting: of n turns in a
 * row at least ⌊n ÷ (limit + 1)⌋.
 */
export function addRestRows(model: RotationModel, limit: number): void {
  const isSingle = model.groups.every(({ turns }) => turns.length === 1)
  for (const [player, own] of model.problem.players.entries()) {
    if (restLimitOf(own, limit) !== limit) continue
    if (isSingle) addWindows(model, player, limit)
    else addStretches(model, player, limit)
  }
}

function isThroughout(model: RotationModel, player: number, first: number, last: number): boolean {
  const present = model.problem.players[player]?.present ?? []
  return present.slice(first, last + 1).every((isThere) => isThere)
}

function addWindows(model: RotationModel, player: number, limit: number): void {
  const rested = model.problem.players[player]?.restedBefore ?? 0
  if (rested > 0) addFirstWindow(model, player, Math.max(1, limit + 1 - rested))
  for (let first = 0; first + limit < model.groups.length; first += 1) {
    if (!isThroughout(model, player, first, first + limit)) continue
    const groups = Array.from({ length: limit + 1 }, (_, step) => first + step)
    const active = new Map(groups.flatMap((group) => activeEntries(model, player, group)))
    // One who keeps through several of these turns has one turn of not resting more than needed: each counts once.
    model.linear.addRow({ lower: 1 }, active)
  }
}

/** Who had rested before needs a place in the first so many turns. */
function addFirstWindow(model: RotationModel, player: number, turns: number): void {
  if (turns > model.groups.length || !isThroughout(model, player, 0, turns - 1)) return
  const groups = Array.from({ length: turns }, (_, group) => group)
  model.linear.addRow(
    { lower: 1 },
    groups.flatMap((group) => activeEntries(model, player, group)),
  )
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
