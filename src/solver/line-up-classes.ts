import type { LineUpProblem } from '#lineup/problem'

/** Players between whom a line-up need not tell: whatever one may have, so may the others. Places in the list of players. */
export type LineUpClass = { readonly members: readonly number[] }

/** Players with the same presence, rights, dues and wishes; held places and pairs make a player one of its own. */
export function lineUpClasses(problem: LineUpProblem): readonly LineUpClass[] {
  const inPair = new Set([...problem.apart, ...problem.together].flat())
  const byLikeness = new Map<string, number[]>()
  for (const [player, { id, ...own }] of problem.players.entries()) {
    const held = problem.fixed
      .flatMap((fixed) => (fixed.player === player ? [`${fixed.window}${fixed.place}`] : []))
      .sort()
    const likeness = JSON.stringify([own, held, inPair.has(player) ? id : null])
    const alike = byLikeness.get(likeness)
    if (alike) alike.push(player)
    else byLikeness.set(likeness, [player])
  }
  return [...byLikeness.values()].map((members) => ({ members }))
}

/** Everybody as a class of one: where what each has, line by line, must be told apart. */
export function singleClasses(problem: LineUpProblem): readonly LineUpClass[] {
  return problem.players.map((_, player) => ({ members: [player] }))
}
