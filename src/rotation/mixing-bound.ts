import { presentAt, type RotationProblem } from '#rotation/problem'

/**
 * No rotation mixes team-mates better than this. The sides of all stations make so many meetings of pairs; spread over
 * the pairs that can meet at all as evenly as whole numbers allow, their squares add up to the bound.
 */
export function mixingBound(problem: RotationProblem): number {
  const meetings = problem.turns.reduce(
    (sum, { stations }) =>
      stations.reduce((own, { attack, defend }) => own + pairsOf(attack) + pairsOf(defend), sum),
    0,
  )
  const met = new Set<string>()
  for (const turn of problem.turns.keys()) {
    const present = presentAt(problem, turn)
    present.forEach((one, index) => {
      for (const other of present.slice(index + 1)) met.add(`${one} ${other}`)
    })
  }
  for (const [one, other] of problem.apart) met.delete(one < other ? `${one} ${other}` : `${other} ${one}`)
  return evenSquares(meetings, met.size)
}

function pairsOf(count: number): number {
  return (count * (count - 1)) / 2
}

function evenSquares(total: number, parts: number): number {
  if (parts === 0) return 0
  const least = Math.floor(total / parts)
  const more = total - least * parts
  return more * (least + 1) ** 2 + (parts - more) * least ** 2
}
