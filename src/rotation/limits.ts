import type { RotationPlayer, RotationProblem } from '#rotation/problem'

/** Whether anyone has a limit of its own: at most so many turns, or a wait after each. */
export function hasOwnLimits(problem: RotationProblem): boolean {
  return problem.players.some(({ mostTurns, restsAfterTurn }) => mostTurns != null || restsAfterTurn === true)
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
 * the limit would not leave one to spare waits as long as that asks for: the others' limit is not raised for it.
 */
export function restLimitOf(player: RotationPlayer | undefined, limit: number): number {
  if (player?.mostTurns == null) return limit
  const rested = player.restedBefore ?? 0
  const needed = runsOf(player.present).reduce(
    (sum, run, index) =>
      sum + Math.floor((run + (index === 0 && player.present[0] ? rested : 0)) / (limit + 1)),
    0,
  )
  return player.mostTurns > needed ? limit : Number.POSITIVE_INFINITY
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
