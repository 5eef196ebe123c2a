import type { RotationPlayer, RotationProblem } from '#rotation/problem'

/** Whether anyone has a limit of its own: at most so many turns, a wait after each, or longer waits by agreement. */
export function hasOwnLimits(problem: RotationProblem): boolean {
  return problem.players.some(
    ({ mostTurns, restsAfterTurn, dueShare = 1 }) =>
      mostTurns != null || restsAfterTurn === true || dueShare < 1,
  )
}

/** Most turns with a place that a player's own limits let it have. */
export function mostTurnsOf({ present, mostTurns, restsAfterTurn }: RotationPlayer): number {
  const there = restsAfterTurn
    ? runsOf(present).reduce((sum, run) => sum + Math.ceil(run / 2), 0)
    : present.filter((isThere) => isThere).length
  return Math.min(there, mostTurns ?? there)
}

/**
 * How many turns in a row a player may rest when all are asked to keep to `limit`. Whoever agreed to so few turns that
 * the limit would not leave one to spare waits as long as that asks for: the others' limit is not raised for it. Whoever
 * is due only a part of its turns waits longer by that part: half of them, and one turn in six takes the place of one in
 * three.
 */
export function restLimitOf(player: RotationPlayer | undefined, limit: number): number {
  if (player?.mostTurns == null) return longerBy(player?.dueShare ?? 1, limit)
  const rested = player.restedBefore ?? 0
  const needed = runsOf(player.present).reduce(
    (sum, run, index) =>
      sum + Math.floor((run + (index === 0 && player.present[0] ? rested : 0)) / (limit + 1)),
    0,
  )
  return player.mostTurns > needed ? longerBy(player.dueShare ?? 1, limit) : Number.POSITIVE_INFINITY
}

function longerBy(dueShare: number, limit: number): number {
  if (dueShare >= 1) return limit
  return dueShare > 0 ? Math.ceil((limit + 1) / dueShare - 1e-9) - 1 : Number.POSITIVE_INFINITY
}

/** Whether a player's own limits let it have a place in each of these turns, in order, besides `others` that it has. */
export function mayServe(player: RotationPlayer | undefined, turns: readonly number[], others = 0): boolean {
  if (!player) return false
  if (player.mostTurns != null && player.mostTurns < turns.length + others) return false
  return !player.restsAfterTurn || turns.every((turn, index) => turn + 1 !== turns[index + 1])
}

function runsOf(present: readonly boolean[]): readonly number[] {
  const runs: number[] = []
  present.forEach((isThere, turn) => {
    if (!isThere) return
    if (turn > 0 && present[turn - 1]) runs[runs.length - 1] = (runs.at(-1) ?? 0) + 1
    else runs.push(1)
  })
  return runs
}
