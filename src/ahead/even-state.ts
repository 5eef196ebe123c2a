import { evenSeats } from '#ahead/even-seats'
import { type AheadChoices, chosenOffer } from '#ahead/plan'
import { playerColumns } from '#ahead/player-columns'
import type { AheadProblem } from '#ahead/problem'
import { seatColumns } from '#ahead/seat-column'
import { movesWithSeats, type SeatMove, seatMoves } from '#ahead/seat-moves'
import { wishedThemes, wishedThemesMet } from '#ahead/wished-themes'

const columns = seatColumns.length
const columnByColumn = seatMoves.toSorted((one, other) => one.more - other.more)

/** Everything that leans change, as it stands when chosen offers are shared out evenly. Seconds; players in their order. */
export type EvenState = {
  /** By player and figure. */
  readonly gap: Float64Array
  readonly tolerance: Float64Array
  /** Of the themes that are wished for. */
  readonly share: Float64Array
  readonly themeTolerance: Float64Array
  /** By player and wished theme: what is short of its share. */
  readonly short: Float64Array
  /** By practice, player and seat column; and by practice and player what is left for waiting. */
  readonly even: Float64Array
  readonly waits: Float64Array
  /** By player and seat column, of all practices. */
  readonly allEven: Float64Array
  /** By practice: the places, among the themes wished for, of those it meets; and the moves that there are seats for. */
  readonly meets: readonly (readonly number[])[]
  readonly moves: readonly (readonly SeatMove[])[]
}

export function evenState(problem: AheadProblem, choices: AheadChoices): EvenState {
  const { players, practices, themes } = problem
  const count = players.length
  const wished = wishedThemes(themes)
  const [gap, tolerance] = [playerColumns(players, 'gap'), playerColumns(players, 'tolerance')]
  const share = Float64Array.from(wished.map((theme) => themes[theme]?.wishedShare ?? 0))
  const themeTolerance = Float64Array.from(players, (own) => own.themeTolerance)
  const short = new Float64Array(count * wished.length)
  const even = new Float64Array(practices.length * count * columns)
  const waits = new Float64Array(practices.length * count)
  const allEven = new Float64Array(count * columns)
  const played = players.map(({ playedSeconds }) => playedSeconds)
  const inTheme = players.map(({ themeSeconds }) => wished.map((theme) => themeSeconds[theme] ?? 0))
  const meets: (readonly number[])[] = []
  const moves: (readonly SeatMove[])[] = []
  practices.forEach((practice, at) => {
    const offer = chosenOffer(problem, choices, at)
    meets.push(offer ? wishedThemesMet(themes, { wished, theme: offer.theme }) : [])
    moves.push(
      movesWithSeats(
        columnByColumn,
        seatColumns.map((column) => (offer?.seats[column] ?? 0) > 0),
      ),
    )
    if (!offer) return
    evenSeats(problem, practice, offer).forEach((own, player) => {
      let seated = 0
      seatColumns.forEach((column, index) => {
        even[(at * count + player) * columns + index] = own[column]
        allEven[player * columns + index] = (allEven[player * columns + index] ?? 0) + own[column]
        seated += own[column]
      })
      waits[at * count + player] = Math.max(0, (practice.comes[player] ?? 0) * offer.liveSeconds - seated)
      played[player] = (played[player] ?? 0) + seated
      const themeSeconds = inTheme[player] ?? []
      for (const place of meets[at] ?? []) themeSeconds[place] = (themeSeconds[place] ?? 0) + seated
    })
  })
  players.forEach((_, player) => {
    wished.forEach((_, place) => {
      short[player * wished.length + place] =
        (share[place] ?? 0) * (played[player] ?? 0) - (inTheme[player]?.[place] ?? 0)
    })
  })
  return { gap, tolerance, share, themeTolerance, short, even, waits, allEven, meets, moves }
}
