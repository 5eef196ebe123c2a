import { balance } from '#ahead/chance/balance'
import type { Dealer } from '#ahead/chance/dealer'
import { type EvenShare, shareEvenly } from '#ahead/chance/even-share'
import { columnCount } from '#ahead/chance/standing'
import type { AheadProblem } from '#ahead/problem'
import { restPlace, seatCount, seatPlaces } from '#ahead/seat-places'
import { situations } from '#exposure/column'
import { type RotationColumn, rotationColumns, seatRoles } from '#rotation/problem'

const placesOf = (columns: readonly RotationColumn[]) =>
  columns.map((column) => rotationColumns.indexOf(column))
const playPlaces = placesOf(seatRoles)
const rolePlaces = [...playPlaces, restPlace]
const situationPlaces = placesOf(situations)
/** Waiting follows from the rest. */
const dealtPlaces = [...playPlaces, ...situationPlaces]

/** Rounds at most in which roles are made to add up, of everyone and of each. */
const rounds = 8
/** Seconds that a player may have too much or too little in all. */
const hair = 0.1

/**
 * Deals as so far: everyone its even share, and for each minute of it as much more or less of a column as it had so far
 * for each minute played; then so much is taken from all who came that the places are those that there are, and everyone
 * is there as long as it is. Themes
 * are met in the parts in which the squad met them so far. Places and time are those of the plan: what differs is who gets
 * them, and of which theme. Null: nothing was played that could be carried on.
 */
export function dealerAsSoFar({ players, themes }: AheadProblem): Dealer | null {
  const allPlayed = players.reduce((all, { playedSeconds }) => all + playedSeconds, 0)
  if (allPlayed <= 0) return null
  const themeParts = themes.map(
    (_, theme) => players.reduce((all, own) => all + (own.themeSeconds[theme] ?? 0), 0) / allPlayed,
  )
  const drift = Float64Array.from(
    players.flatMap(({ gap, gapPlayedSeconds }) =>
      rotationColumns.map((column) => (gapPlayedSeconds > 0 ? gap[column] / gapPlayedSeconds : 0)),
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
    columnsOf.able[restPlace] = practice.liveSeconds - playedOf(columnsOf.able)
    columnsOf.others[restPlace] = practice.liveSeconds - playedOf(columnsOf.others)
    for (let at = 0; at < count; at++)
      for (let place = 0; place < columnCount; place++)
        lean[at * columnCount + place] =
          (drift[(here[at] ?? 0) * columnCount + place] ?? 0) * playedOf(shareOf(at))
    const makeAddUp = (place: number) => {
      for (let at = 0; at < count; at++) {
        const share = shareOf(at)[place] ?? 0
        desk.low[at] = -share
        desk.high[at] = share > 0 ? practice.liveSeconds - share : 0
        desk.wish[at] = lean[at * columnCount + place] ?? 0
      }
      balance({ count, ...desk })
      for (let at = 0; at < count; at++) lean[at * columnCount + place] = desk.wish[at] ?? 0
    }
    for (const place of situationPlaces) makeAddUp(place)
    // What is taken from everyone of one role leaves a player with too much or too little in all: by turns until both fit.
    for (let round = 0; round < rounds; round++) {
      for (const place of rolePlaces) makeAddUp(place)
      let most = 0
      for (let at = 0; at < count; at++) {
        const over = takeOver(lean, at * columnCount, shareOf(at))
        most = Math.max(most, Math.abs(over))
      }
      if (most < hair) break
    }
    for (const place of playPlaces) makeAddUp(place)
    for (let at = 0; at < count; at++) {
      const player = here[at] ?? 0
      for (const place of dealtPlaces)
        add(gap, player * columnCount + place, lean[at * columnCount + place] ?? 0)
      const more = playedOf(lean, at * columnCount)
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
  for (const seat of seats) for (const place of seatPlaces[seat] ?? []) add(to, place, from[seat] ?? 0)
}

/** Seconds of attacking, defending and keeping together, in a list of columns that begins somewhere. */
function playedOf(columns: Float64Array, first = 0): number {
  let all = 0
  for (const place of playPlaces) all += columns[first + place] ?? 0
  return all
}

/** Takes what a player has too much in all (negative: too little) in equal parts from the roles that it has a share of. */
function takeOver(lean: Float64Array, first: number, shares: Float64Array): number {
  let [over, open] = [0, 0]
  for (const place of rolePlaces) {
    over += lean[first + place] ?? 0
    if ((shares[place] ?? 0) > 0) open++
  }
  for (const place of rolePlaces) if ((shares[place] ?? 0) > 0) add(lean, first + place, -over / open)
  return over
}

function add(list: Float64Array, at: number, seconds: number): void {
  list[at] = (list[at] ?? 0) + seconds
}
