import type { Seconds } from '#common/time'
import { fairLineUp } from '#lineup/fair-line-up'
import { nothingMet } from '#lineup/met-seconds'
import { type LineUpPlayer, type LineUpWindow, noRules, notRunning } from '#lineup/problem'
import { noWishes } from '#match/format/line-wish'
import type { Line } from '#match/match'
import type { PlayerId } from '#squad/player'
import { bookStartOf, type PlayedPeriod } from '#touchline/match-clock'
import type { MatchState } from '#touchline/match-state'

/** What each player was due of the match so far: seconds on, of them in goal. As the book will say it. */
export function pastFairness(
  state: MatchState,
): ReadonlyMap<PlayerId, { readonly play: number; readonly keep: number }> {
  const due = new Map(state.players.map(({ id }) => [id, { play: 0, keep: 0 }]))
  for (const window of state.periods.flatMap((period) => windowsOf(state, period))) {
    const players = state.players.map((player) => playerIn(window, player))
    const none = { apart: [], together: [], fixed: [] }
    const fair = fairLineUp({ ...none, windows: [window], players, rules: noRules, hasStart: false })
    for (const [index, { id }] of players.entries()) {
      const own = due.get(id)
      if (!own) continue
      own.play += fair.play[index] ?? 0
      own.keep += fair.keep[index] ?? 0
    }
  }
  return due
}

type PastWindow = LineUpWindow & {
  readonly book: Seconds
  readonly bookEnd: Seconds
  /** Whoever kept goal could, then. */
  readonly kept: ReadonlySet<PlayerId>
}

function playerIn(
  { book, bookEnd, kept }: PastWindow,
  { id, keeps, segments }: MatchState['players'][number],
): LineUpPlayer {
  const isHere = segments.some(
    ({ state, from, to }) => state === 'here' && from <= book && (to === null || bookEnd <= to),
  )
  return {
    ...{ id, running: notRunning, wishes: noWishes, leastSeconds: 0, mostSeconds: null },
    keeps: keeps || kept.has(id),
    isThere: [isHere],
    owed: { playSeconds: 0, keepSeconds: 0, starts: 0 },
    metSeconds: nothingMet,
  }
}

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
    const on = own.filter(({ from, to }) => from <= start && end <= (to ?? length))
    for (const { line } of on) places[line] += 1
    const kept = new Set(on.flatMap(({ playerId, line }) => (line === 'keeper' ? [playerId] : [])))
    return { period: period.period, start, end, places, book: book + start, bookEnd: book + end, kept }
  })
}
