import type { RotationProblem } from '#rotation/problem'

/** Turns that are alike in every way that matters: round, stations, who is there, nothing fixed that differs. */
export type TurnGroup = { readonly turns: readonly number[] }

/** Each turn by itself. */
export function singleTurns(problem: RotationProblem): readonly TurnGroup[] {
  return problem.turns.map((_, turn) => ({ turns: [turn] }))
}

/** As few groups as there can be, in the order of their first turns. */
export function alikeTurns(problem: RotationProblem): readonly TurnGroup[] {
  const groups = new Map<string, number[]>()
  problem.turns.forEach(({ round, stations }, turn) => {
    const present = problem.players.map((player) => (player.present[turn] ? 1 : 0)).join('')
    const fixed = problem.fixed
      .filter((own) => own.turn === turn)
      .map(({ player, place }) => `${player}:${place}`)
      .sort()
    const shape = stations.map(({ attack, defend, keep }) => [attack, defend, keep])
    const key = JSON.stringify([round, shape, present, fixed])
    groups.set(key, [...(groups.get(key) ?? []), turn])
  })
  return [...groups.values()].map((turns) => ({ turns }))
}
