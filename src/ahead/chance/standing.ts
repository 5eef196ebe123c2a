import { playerColumns } from '#ahead/player-columns'
import type { AheadProblem } from '#ahead/problem'
import { rotationColumns } from '#rotation/problem'

/** How everyone stands at one moment of one rest of a term: a player's figures lie side by side in each list. */
export type Standing = {
  /** By player and column of `rotationColumns`. */
  readonly gap: Float64Array
  readonly played: Float64Array
  /** By player and theme. */
  readonly themes: Float64Array
}

export const columnCount = rotationColumns.length

/** How everyone stands before the first practice to come. */
export function standingNow({ players, themes }: Pick<AheadProblem, 'players' | 'themes'>): Standing {
  return {
    gap: playerColumns(players, 'gap'),
    played: Float64Array.from(players.map(({ playedSeconds }) => playedSeconds)),
    themes: Float64Array.from(
      players.flatMap(({ themeSeconds }) => themes.map((_, theme) => themeSeconds[theme] ?? 0)),
    ),
  }
}

/** Makes one standing the same as another. */
export function copyStanding({ from, to }: { readonly from: Standing; readonly to: Standing }): void {
  to.gap.set(from.gap)
  to.played.set(from.played)
  to.themes.set(from.themes)
}

/** A standing of its own that is the same. */
export function standingLike({ gap, played, themes }: Standing): Standing {
  return { gap: gap.slice(), played: played.slice(), themes: themes.slice() }
}
