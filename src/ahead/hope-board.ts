import { evenSeats } from '#ahead/even-seats'
import type { AheadChoices } from '#ahead/plan'
import { secondsCounted } from '#ahead/plan-value'
import { playerColumns } from '#ahead/player-columns'
import type { AheadProblem, Offer } from '#ahead/problem'
import { type SeatSeconds, seatColumns } from '#ahead/seat-column'
import { restPlace, seatPlaces } from '#ahead/seat-places'
import { wishedThemes, wishedThemesMet } from '#ahead/wished-themes'
import { secondsInMinute } from '#common/time'
import { rotationColumns } from '#rotation/problem'

const figures = rotationColumns.length
/** By seat column the figures that it counts in, waiting being the other side of it. */
const figuresOf = seatPlaces.map((places) => [...places, restPlace])

/**
 * What choices could come to at best, in minutes, without working out who gets more of what: every gap is taken to close
 * as far as leaning gently on the seats chosen could close it if it were the only one. Quick, and never more than the
 * balance of a real plan; themes are counted as shared out evenly. One practice at a time may be changed.
 */
export type HopeBoard = {
  /** What the choices taken so far come to. */
  readonly value: () => number
  /** Takes an offer for a practice, or takes it back (`sign` −1). */
  readonly add: (practice: number, offer: number, sign: 1 | -1) => void
  /** Takes another offer for a practice that has one. */
  readonly change: (practice: number, from: number, to: number) => void
  /** Takes choices for the first practices, as many as there are, or takes them back. */
  readonly addAll: (choices: AheadChoices, sign: 1 | -1) => void
}

export function hopeBoard(problem: AheadProblem): HopeBoard {
  const { players, practices, themes, gentle } = problem
  const count = players.length
  const wished = wishedThemes(themes)
  const width = wished.length
  const share = Float64Array.from(wished.map((theme) => themes[theme]?.wishedShare ?? 0))
  const [gap, tolerance] = [playerColumns(players, 'gap'), playerColumns(players, 'tolerance')]
  const themeTolerance = Float64Array.from(players.map((own) => own.themeTolerance))
  const seats = new Float64Array(count * figures)
  const played = Float64Array.from(players.map(({ playedSeconds }) => playedSeconds))
  const inTheme = Float64Array.from(
    players.flatMap(({ themeSeconds }) => wished.map((theme) => themeSeconds[theme] ?? 0)),
  )
  const meets = themes.map((_, theme) => wishedThemesMet(themes, { wished, theme }))
  const shares = practices.map((practice) => {
    const known = new Map<SeatSeconds, EvenShare>()
    return practice.offers.map((offer) => {
      const own = known.get(offer.seats) ?? evenShare(problem, practice, offer)
      known.set(offer.seats, own)
      return own
    })
  })
  const [up, down] = [gentle.most - 1, 1 - gentle.least]

  function value(): number {
    let all = 0
    for (let index = 0; index < gap.length; index++) {
      const own = gap[index] ?? 0
      // Waiting falls where playing rises.
      const reach = own < 0 === (index % figures !== restPlace) ? up : down
      all += secondsCounted(Math.abs(own) - reach * (seats[index] ?? 0), tolerance[index] ?? 0)
    }
    for (let player = 0; player < count; player++) {
      const [own, limit] = [played[player] ?? 0, themeTolerance[player] ?? 0]
      for (let place = 0; place < width; place++) {
        const short = (share[place] ?? 0) * own - (inTheme[player * width + place] ?? 0)
        all += secondsCounted(short, limit)
      }
    }
    return all / secondsInMinute
  }

  function add(practice: number, offer: number, sign: 1 | -1): void {
    const own = shares[practice]?.[offer]
    const theme = practices[practice]?.offers[offer]?.theme
    if (!own || theme === undefined) return
    for (let index = 0; index < seats.length; index++)
      seats[index] = (seats[index] ?? 0) + sign * (own.seats[index] ?? 0)
    const met = meets[theme] ?? []
    for (let player = 0; player < count; player++) {
      const seconds = sign * (own.played[player] ?? 0)
      played[player] = (played[player] ?? 0) + seconds
      for (const place of met)
        inTheme[player * width + place] = (inTheme[player * width + place] ?? 0) + seconds
    }
  }

  function change(practice: number, from: number, to: number): void {
    const [before, after] = [shares[practice]?.[from], shares[practice]?.[to]]
    const offers = practices[practice]?.offers
    if (!before || !after || !offers) return
    if (before !== after)
      for (let index = 0; index < seats.length; index++)
        seats[index] = (seats[index] ?? 0) - (before.seats[index] ?? 0) + (after.seats[index] ?? 0)
    const left = meets[offers[from]?.theme ?? -1] ?? []
    const met = meets[offers[to]?.theme ?? -1] ?? []
    for (let player = 0; player < count; player++) {
      const [less, more] = [before.played[player] ?? 0, after.played[player] ?? 0]
      const base = player * width
      played[player] = (played[player] ?? 0) - less + more
      for (const place of left) inTheme[base + place] = (inTheme[base + place] ?? 0) - less
      for (const place of met) inTheme[base + place] = (inTheme[base + place] ?? 0) + more
    }
  }

  return {
    value,
    add,
    change,
    addAll: (choices, sign) => {
      choices.forEach((offer, practice) => {
        add(practice, offer, sign)
      })
    },
  }
}

/** By player and figure, what of it is to be leaned on: its seats, and of waiting all seats that could be more or fewer. */
type EvenShare = { readonly seats: Float64Array; readonly played: Float64Array }

function evenShare(
  problem: AheadProblem,
  practice: AheadProblem['practices'][number],
  offer: Offer,
): EvenShare {
  const seats = new Float64Array(problem.players.length * figures)
  const played = new Float64Array(problem.players.length)
  evenSeats(problem, practice, offer).forEach((own, player) => {
    seatColumns.forEach((column, seat) => {
      for (const figure of figuresOf[seat] ?? []) {
        const index = player * figures + figure
        seats[index] = (seats[index] ?? 0) + own[column]
      }
      played[player] = (played[player] ?? 0) + own[column]
    })
  })
  return { seats, played }
}
