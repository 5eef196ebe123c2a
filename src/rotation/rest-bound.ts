import { keeperChains } from '#rotation/keeper-chains'
import { allSeatsOfTurn, type RotationProblem } from '#rotation/problem'

/**
 * The smallest rest limit, from `from` on, that counting does not forbid: in every run of limit + 1 turns there must be
 * a place for each player who is there for all of it. A keeper who stays fills the seats of its chain alone, so a
 * chain counts once. No limit below the answer is possible; the answer itself may still not be.
 */
export function leastRestByCounting(problem: RotationProblem, from: number): number {
  let limit = from
  while (limit < problem.turns.length && !hasRoom(problem, limit)) limit += 1
  return limit
}

function hasRoom(problem: RotationProblem, limit: number): boolean {
  const chains = keeperChains(problem)
  const chained = problem.turns.map((_, turn) => chains.filter(({ turns }) => turns.includes(turn)).length)
  for (let first = 0; first + limit < problem.turns.length; first += 1) {
    const last = first + limit
    let places = chains.filter(({ turns }) => turns.some((turn) => turn >= first && turn <= last)).length
    for (let turn = first; turn <= last; turn += 1) {
      const own = problem.turns[turn]
      if (own) places += allSeatsOfTurn(own) - (chained[turn] ?? 0)
    }
    const throughout = problem.players.filter(({ present }) =>
      present.slice(first, last + 1).every((isThere) => isThere),
    ).length
    if (throughout > places) return false
  }
  return true
}
