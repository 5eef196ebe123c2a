import { balance } from '#ahead/chance/balance'
import type { Dealer } from '#ahead/chance/dealer'
import { type EvenShare, shareEvenly } from '#ahead/chance/even-share'
import { restPlace, seatCount, seatPlaces } from '#ahead/chance/seat-places'
import { columnCount } from '#ahead/chance/standing'
import type { AheadProblem } from '#ahead/problem'
import { rotationColumns } from '#rotation/problem'

const roles = ['attack', 'defend', 'keep'] as const
const rolePlaces = roles.map((role) => rotationColumns.indexOf(role))
/** Waiting follows from the rest. */
const places = rotationColumns.map((_, place) => place).filter((place) => place !== restPlace)

/**
 * Deals as so far: everyone its even share, and for each minute of it as much more or less of a column as it had so far
 * for each minute played; then the same is taken from all who came, so that the places are those that there are. Themes
 * are met in the parts in which the squad met them so far. Null: nothing was played that could be carried on.
 */
export function dealerAsSoFar({ players, themes }: AheadProblem): Dealer | null {
  const allPlayed = players.reduce((all, { playedSeconds }) => all + playedSeconds, 0)
  if (allPlayed <= 0) return null
  const themeParts = themes.map(
    (_, theme) => players.reduce((all, own) => all + (own.themeSeconds[theme] ?? 0), 0) / allPlayed,
  )
  const drift = Float64Array.from(
    players.flatMap(({ gap, playedSeconds }) =>
      rotationColumns.map((column) => (playedSeconds > 0 ? gap[column] / playedSeconds : 0)),
    ),
  )
  const even: EvenShare = { able: new Float64Array(seatCount), others: new Float64Array(seatCount) }
  const columnsOf = { able: new Float64Array(columnCount), others: new Float64Array(columnCount) }
  const list = () => new Float64Array(players.length)
  const desk = { wish: list(), low: list(), high: list() }
  const lean = new Float64Array(players.length * columnCount)

  return (practice, came, { gap, played, themes: themeSeconds }) => {
    const { here, count } = came
    if (count === 0) return
    shareEvenly(practice, came, even)
    sumColumns(practice.columns, even.able, columnsOf.able)
    sumColumns(practice.columns, even.others, columnsOf.others)
    const shareOf = (at: number) => (practice.keeps[here[at] ?? 0] ? columnsOf.able : columnsOf.others)
    for (const place of places) {
      for (let at = 0; at < count; at++) {
        const share = shareOf(at)[place] ?? 0
        desk.low[at] = -share
        desk.high[at] = share > 0 ? practice.liveSeconds - share : 0
        desk.wish[at] = (drift[(here[at] ?? 0) * columnCount + place] ?? 0) * playedOf(shareOf(at))
      }
      balance({ count, ...desk })
      for (let at = 0; at < count; at++) lean[at * columnCount + place] = desk.wish[at] ?? 0
    }
    let scale = 1
    for (let at = 0; at < count; at++) {
      const more = playedOf(lean, at * columnCount)
      const free = practice.liveSeconds - playedOf(shareOf(at))
      if (more > free) scale = Math.min(scale, Math.max(0, free) / more)
    }
    for (let at = 0; at < count; at++) {
      const player = here[at] ?? 0
      for (const place of places)
        add(gap, player * columnCount + place, scale * (lean[at * columnCount + place] ?? 0))
      const more = scale * playedOf(lean, at * columnCount)
      add(gap, player * columnCount + restPlace, -more)
      const seconds = playedOf(shareOf(at)) + more
      add(played, player, seconds)
      themeParts.forEach((part, theme) => {
        add(themeSeconds, player * themes.length + theme, part * seconds)
      })
    }
  }
}

function sumColumns(seats: readonly number[], from: Float64Array, to: Float64Array): void {
  to.fill(0)
  for (const seat of seats) {
    const { role = 0, situation = -1 } = seatPlaces[seat] ?? {}
    add(to, role, from[seat] ?? 0)
    if (situation >= 0) add(to, situation, from[seat] ?? 0)
  }
}

/** Seconds of attacking, defending and keeping together, in a list of columns that begins somewhere. */
function playedOf(columns: Float64Array, first = 0): number {
  let all = 0
  for (const place of rolePlaces) all += columns[first + place] ?? 0
  return all
}

function add(list: Float64Array, at: number, seconds: number): void {
  list[at] = (list[at] ?? 0) + seconds
}
