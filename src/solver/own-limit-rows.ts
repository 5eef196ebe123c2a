import type { RotationProblem } from '#rotation/problem'
import { activeEntries, type RotationModel, rotationModel } from '#solver/rotation-model'
import { contiguousBlocks } from '#solver/turn-blocks'
import type { TurnGroup } from '#solver/turn-groups'

/** The model of a rotation with what single players agreed to. */
export function modelWithLimits(problem: RotationProblem, groups: readonly TurnGroup[]): RotationModel {
  const model = rotationModel(problem, groups)
  addOwnLimitRows(model)
  return model
}

/**
 * What players agreed to, in a rotation model: at most so many turns, exactly; a wait after each turn, exactly with
 * groups of single turns, with larger ones as what follows by counting: of n turns in a row half, rounded up.
 */
function addOwnLimitRows(model: RotationModel): void {
  for (const [player, own] of model.problem.players.entries()) {
    if (own.mostTurns != null) addMostTurns(model, player, own.mostTurns)
    if (own.restsAfterTurn) addWaits(model, player)
  }
}

function addMostTurns(model: RotationModel, player: number, upper: number): void {
  model.linear.addRow(
    { upper },
    model.groups.flatMap((_, group) => activeEntries(model, player, group)),
  )
}

function addWaits(model: RotationModel, player: number): void {
  const blocks = contiguousBlocks(model)
  const isSingle = model.groups.every(({ turns }) => turns.length === 1)
  const present = model.problem.players[player]?.present ?? []
  for (const [index, { first, last, groups }] of blocks.entries()) {
    const next = isSingle ? blocks[index + 1] : undefined
    if (isSingle && (!next || !present[first] || !present[next.first])) continue
    // Groups hold turns alike, so who is there for one of a group's turns is there for all.
    const there = present.slice(first, last + 1).filter((isThere) => isThere).length
    const upper = isSingle ? 1 : halfOf(present.slice(first, last + 1))
    if (there === 0) continue
    const own = next ? [...groups, ...next.groups] : groups
    model.linear.addRow(
      { upper },
      own.flatMap((group) => activeEntries(model, player, group)),
    )
  }
}

/** Most turns of a stretch with a place for who waits after each: half of every run, rounded up. */
function halfOf(present: readonly boolean[]): number {
  let most = 0
  let run = 0
  for (const isThere of [...present, false]) {
    if (isThere) run += 1
    else {
      most += Math.ceil(run / 2)
      run = 0
    }
  }
  return most
}
