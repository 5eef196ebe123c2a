import { keeperChains } from '#rotation/keeper-chains'
import { restLimitOf } from '#rotation/limits'
import { allSeatsOfTurn, type RotationProblem } from '#rotation/problem'

/**
 * The smallest rest limit, from `from` on, that counting does not forbid: in every run of limit + 1 turns there must be
 * a place for each player who is there for all of it. A keeper who stays fills the seats of its chain alone, so a
 * chain counts once. Who had rested before the first turn needs a place the sooner. No limit below the answer is possible; the answer itself may still not be.
 */
export function leastRestByCounting(problem: RotationProblem, from: number): number {
  let limit = from
  const most = problem.turns.length + Math.max(0, ...problem.players.map((own) => own.restedBefore ?? 0))
  while (limit < most && !hasRoom(problem, limit)) limit += 1
  return limit
}

function hasRoom(problem: RotationProblem, limit: number): boolean {
  return hasRoomThroughout(problem, limit) && hasRoomAtOnce(problem, limit)
}

/** From the first turn on, so many turns must seat all whom the limit gives no more than so many. */
function hasRoomAtOnce(problem: RotationProblem, limit: number): boolean {
  let places = 0
  for (let last = 0; last < Math.min(limit + 1, problem.turns.length); last += 1) {
    const own = problem.turns[last]
    if (own) places += allSeatsOfTurn(own)
    const due = problem.players.filter(
      (player) =>
        (player.restedBefore ?? 0) > 0 &&
        (player.restedBefore ?? 0) + last + 1 > restLimitOf(player, limit) &&
        player.present.slice(0, last + 1).every((isThere) => isThere),
    )
    if (due.length > places) return false
  }
  return true
}

function hasRoomThroughout(problem: RotationProblem, limit: number): boolean {
  const chains = keeperChains(problem)
  const chained = problem.turns.map((_, turn) => chains.filter(({ turns }) => turns.includes(turn)).length)
  for (let first = 0; first + limit < problem.turns.length; first += 1) {
    const last = first + limit
    let places = chains.filter(({ turns }) => turns.some((turn) => turn >= first && turn <= last)).length
    for (let turn = first; turn <= last; turn += 1) {
      const own = problem.turns[turn]
      if (own) places += allSeatsOfTurn(own) - (chained[turn] ?? 0)
    }
    const throughout = problem.players.filter(
      (player) =>
        restLimitOf(player, limit) === limit &&
        player.present.slice(first, last + 1).every((isThere) => isThere),
    ).length
    if (throughout > places) return false
  }
  return true
}
