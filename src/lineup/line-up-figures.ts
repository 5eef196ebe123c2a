import { fairLineUp } from '#lineup/fair-line-up'
import type { LineUpPlan } from '#lineup/line-up'
import { changesInside, secondsOf } from '#lineup/line-up-values'
import { type LineUpProblem, windowSeconds } from '#lineup/problem'
import type { PlayerId } from '#squad/player'

export type NameOf = (player: PlayerId) => string

/** What of a line-up is said in words; lists go by player, in seconds. */
export type LineUpFigures = {
  readonly played: readonly number[]
  readonly fair: readonly number[]
  readonly secondsThere: readonly number[]
  readonly changes: number
  /** There for some of it; there for all of it. */
  readonly there: readonly number[]
  readonly throughout: readonly number[]
}

export function lineUpFigures(problem: LineUpProblem, plan: LineUpPlan): LineUpFigures {
  const players = [...problem.players.keys()]
  const isThere = (player: number) => problem.players[player]?.isThere ?? []
  return {
    played: players.map((player) => secondsOf(problem, plan[player])),
    fair: fairLineUp(problem).play,
    secondsThere: players.map((player) =>
      problem.windows.reduce(
        (sum, window, index) => (isThere(player)[index] ? sum + windowSeconds(window) : sum),
        0,
      ),
    ),
    changes: changesInside(problem, plan),
    there: players.filter((player) => isThere(player).some(Boolean)),
    throughout: players.filter((player) => isThere(player).every(Boolean)),
  }
}
