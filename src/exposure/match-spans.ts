import type { Interval, Seconds } from '#common/time'
import type { SeatColumn, Seats, Span } from '#exposure/span'
import type { Line, Match, Period } from '#match/match'
import { lines } from '#match/match'
import { type JoinedPresence, joinPresence, listPresent } from '#squad/joined-presence'

const columnOf: Readonly<Record<Line, SeatColumn>> = {
  keeper: { role: 'keep', situation: null, line: null },
  back: { role: 'defend', situation: null, line: 'back' },
  middle: { role: 'middle', situation: null, line: 'middle' },
  forward: { role: 'attack', situation: null, line: 'forward' },
}

/** A span of a match and the place of its period among the match's periods. */
export type MatchSpan = Span & { readonly periodIndex: number }

/**
 * The periods of a match, cut wherever a spell or a joined register line of anyone begins or ends.
 * In order of time, together covering the periods exactly.
 */
export function matchSpans(match: Pick<Match, 'periods' | 'register' | 'spells'>): readonly MatchSpan[] {
  const joined = joinPresence(match.register)
  const cuts = cutsOf(match, joined)
  return match.periods.flatMap((period, periodIndex) =>
    cutPeriod(period, cuts).map((piece) => ({ ...spanOf(match, joined, piece), periodIndex })),
  )
}

function cutsOf(match: Pick<Match, 'spells'>, joined: JoinedPresence): readonly Seconds[] {
  const cuts = new Set<Seconds>()
  for (const spell of match.spells) cuts.add(spell.start).add(spell.end)
  for (const own of joined.values()) for (const line of own) cuts.add(line.from).add(line.to)
  return [...cuts].sort((a, b) => a - b)
}

function cutPeriod(period: Period, cuts: readonly Seconds[]): readonly Interval[] {
  const inside = cuts.filter((cut) => period.start < cut && cut < period.end)
  const edges = [period.start, ...inside, period.end]
  return edges.slice(1).map((to, index) => ({ from: edges[index] as Seconds, to }))
}

function spanOf(match: Pick<Match, 'spells'>, joined: JoinedPresence, piece: Interval): Span {
  const running = match.spells.filter((spell) => spell.start <= piece.from && piece.to <= spell.end)
  const seated = new Set(running.map((spell) => spell.playerId))
  const present = listPresent(joined, piece)
  const seats: readonly Seats[] = lines
    .map((line) => ({
      column: columnOf[line],
      playerIds: running.filter((spell) => spell.line === line).map((spell) => spell.playerId),
    }))
    .filter((s) => s.playerIds.length > 0)
  return {
    start: piece.from,
    end: piece.to,
    themeId: null,
    present,
    seats,
    resting: present.filter((playerId) => !seated.has(playerId)),
    turnCount: 0,
    continuesWait: false,
    continuesTurn: false,
  }
}
