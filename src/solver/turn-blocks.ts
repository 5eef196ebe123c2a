import type { RotationModel } from '#solver/rotation-model'

export type Block = { readonly first: number; readonly last: number; readonly groups: readonly number[] }

/** The turns cut into stretches that are made of whole groups, as short as can be, first to last. */
export function contiguousBlocks(model: RotationModel): readonly Block[] {
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
