import type { Seconds } from '#common/time'
import { byName } from '#fairness/book/by-name'
import { type JudgedFigure, judgeFigure } from '#fairness/book/judged-figure'
import { addLineSeconds, type LineSeconds, noLineSeconds } from '#fairness/matches/line-seconds'
import type { MatchFigure, MatchFigures } from '#fairness/matches/match-figure'
import { emptyStanding, playedFigure, type StandingInput, standingsNow } from '#fairness/standing'
import type { Player, PlayerId } from '#squad/player'
import type { Policy } from '#squad/policy'

/** A player's matches over the days looked at. */
export type MatchRow = {
  readonly player: Player
  readonly matchesThere: number
  /** Written matches it could have been there for. */
  readonly matchesWritten: number
  readonly thereSeconds: Seconds
  /** Minutes on the pitch against the even share. */
  readonly played: JudgedFigure
  /** In every line, goal included. */
  readonly lines: LineSeconds
  readonly starts: number
  /** Starts that an even sharing of the first places gives. */
  readonly dueStarts: number
  readonly offSeconds: Seconds
  readonly longestOffSeconds: Seconds
}

type RowsInput = {
  readonly matches: readonly MatchFigures[]
  readonly standing: Pick<StandingInput, 'accounts' | 'agreements'>
  readonly players: readonly Player[]
  readonly policy: Policy
}

/** Everyone who was at a match, by name, members and guests apart. Their order is never that of a figure. */
export function matchRows(input: RowsInput): {
  readonly members: readonly MatchRow[]
  readonly guests: readonly MatchRow[]
} {
  return { members: rowsOf(input, { isMember: true }), guests: rowsOf(input, { isMember: false }) }
}

function rowsOf({ matches, standing, players, policy }: RowsInput, { isMember }: { isMember: boolean }) {
  const standings = standingsNow({ ...standing, as: isMember ? 'member' : 'guest' })
  return byName(players).flatMap((player): readonly MatchRow[] => {
    const own = (standings.get(player.id) ?? emptyStanding).match
    const figures = figuresOf(matches, player.id).filter((figure) => figure.isMember === isMember)
    if (own.sessionsWritten === 0) return []
    const { wantsToKeep } = player
    const played = judgeFigure(playedFigure(own), {
      role: null,
      kind: 'match',
      wantsToKeep,
      isMember,
      policy,
    })
    return [{ player, matchesWritten: own.sessionsWritten, played, ...sumsOf(figures) }]
  })
}

/** A player's figures match by match, in the order of the matches. */
export function figuresOf(matches: readonly MatchFigures[], playerId: PlayerId): readonly MatchFigure[] {
  return matches.flatMap(({ figures }) => figures.filter((figure) => figure.playerId === playerId))
}

function sumsOf(figures: readonly MatchFigure[]) {
  const sum = (of: (figure: MatchFigure) => number) =>
    figures.reduce((total, figure) => total + of(figure), 0)
  return {
    matchesThere: figures.length,
    thereSeconds: sum((figure) => figure.thereSeconds),
    lines: figures.map(({ lines }) => lines).reduce(addLineSeconds, noLineSeconds),
    starts: sum((figure) => (figure.isStart ? 1 : 0)),
    dueStarts: sum((figure) => figure.dueStarts),
    offSeconds: sum((figure) => figure.thereSeconds - figure.playedSeconds),
    longestOffSeconds: Math.max(0, ...figures.map((figure) => figure.longestOffSeconds)),
  }
}
