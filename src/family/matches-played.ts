import type { MatchFigure } from '#fairness/matches/match-figure'
import { aboutMinutes } from '#family/about-minutes'
import { type Line, lines } from '#match/match'

/** A child's matches as its family reads them. */
export type MatchesPlayed = {
  /** In which it was on the pitch. */
  readonly matches: number
  readonly starts: number
  /** Lines it has played in for more than a moment, goal included. */
  readonly lines: readonly Line[]
}

/** Null: it has not been on the pitch yet. */
export function matchesPlayed(
  figures: readonly Pick<MatchFigure, 'playedSeconds' | 'isStart' | 'lines'>[],
): MatchesPlayed | null {
  const played = figures.filter(({ playedSeconds }) => playedSeconds > 0)
  if (played.length === 0) return null
  const secondsIn = (line: Line) => played.reduce((sum, figure) => sum + figure.lines[line], 0)
  return {
    matches: played.length,
    starts: played.filter(({ isStart }) => isStart).length,
    lines: lines.filter((line) => aboutMinutes(secondsIn(line)) > 0),
  }
}
