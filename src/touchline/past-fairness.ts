import type { Seconds } from '#common/time'
import { fairLineUp } from '#lineup/fair-line-up'
import { type LineUpProblem, type LineUpWindow, noRules, notRunning } from '#lineup/problem'
import { noWishes } from '#match/format/line-wish'
import type { Line } from '#match/match'
import type { PlayerId } from '#squad/player'
import type { MatchState } from '#touchline/match-state'
import { bookStartOf, type PlayedPeriod } from '#touchline/match-times'

/** What each player was due of the match so far, by the book's own fair share: seconds on, of them in goal. */
export function pastFairness(
  state: MatchState,
): ReadonlyMap<PlayerId, { readonly play: number; readonly keep: number }> {
  const windows = state.periods.flatMap((period) => windowsOf(state, period))
  const players = state.players.map(({ id, keeps, segments }): LineUpProblem['players'][number] => ({
    ...{ id, keeps, running: notRunning, wishes: noWishes, leastSeconds: 0, mostSeconds: null },
    owed: { playSeconds: 0, keepSeconds: 0, starts: 0 },
    metSeconds: { back: 0, middle: 0, forward: 0 },
    isThere: windows.map(({ book, bookEnd }) =>
      segments.some(
        (one) => one.state === 'here' && one.from <= book && (one.to === null || bookEnd <= one.to),
      ),
    ),
  }))
  const fair = fairLineUp({
    ...{ windows, players, rules: noRules, apart: [], together: [], fixed: [], hasStart: false },
  })
  return new Map(
    players.map(({ id }, index) => [id, { play: fair.play[index] ?? 0, keep: fair.keep[index] ?? 0 }]),
  )
}

type PastWindow = LineUpWindow & { readonly book: Seconds; readonly bookEnd: Seconds }

/** A period cut wherever somebody came on, went off, came or left. */
function windowsOf(state: MatchState, period: PlayedPeriod): readonly PastWindow[] {
  const length = period.length ?? state.second - period.start
  const book = bookStartOf(state, period)
  const own = state.spells.filter((spell) => spell.period === period.period)
  const cuts = [
    ...own.flatMap(({ from, to }) => [from, to ?? length]),
    ...state.players.flatMap(({ segments }) =>
      segments.flatMap(({ from, to }) => [from - book, (to ?? length + book) - book]),
    ),
  ]
  const edges = [...new Set([0, ...cuts.filter((cut) => 0 < cut && cut < length), length])].sort(
    (a, b) => a - b,
  )
  return edges.slice(1).map((end, index) => {
    const start = edges[index] ?? 0
    const places: Record<Line, number> = { keeper: 0, back: 0, middle: 0, forward: 0 }
    for (const { line, from, to } of own) if (from <= start && end <= (to ?? length)) places[line] += 1
    return { period: period.period, start, end, places, book: book + start, bookEnd: book + end }
  })
}
