import { evenSeats } from '#ahead/even-seats'
import type { AheadPractice, AheadProblem, Offer } from '#ahead/problem'
import { seatColumns } from '#ahead/seat-column'
import { themeWithAbove } from '#ahead/theme-with-above'
import { secondsInMinute } from '#common/time'

/** What a practice comes to when some offer is chosen, as far as themes do not matter; in minutes. */
export type AheadShape = {
  /** By player and seat column: the even share. */
  readonly even: readonly (readonly number[])[]
  /** By player: time with any seat, and time that it is there. */
  readonly plays: readonly number[]
  readonly there: readonly number[]
  readonly live: number
}

/** A practice for a linear model: its shapes, and by offer which shape it has and which wished themes it meets. */
export type ShapedPractice = {
  readonly shapes: readonly AheadShape[]
  readonly shapeOf: readonly number[]
  /** Place in `meetings`. */
  readonly meetingOf: readonly number[]
}

export type AheadShapes = {
  readonly practices: readonly ShapedPractice[]
  /** Sets of wished themes that one practice can meet together. */
  readonly meetings: readonly (readonly number[])[]
}

export function aheadShapes(problem: AheadProblem): AheadShapes {
  const meetings: (readonly number[])[] = []
  const known = new Map<string, number>()
  const meetingOf = problem.themes.map((_, theme) => {
    const met = themeWithAbove(problem.themes, theme)
      .filter((own) => (problem.themes[own]?.wishedShare ?? 0) > 0)
      .sort((one, other) => one - other)
    const at = known.get(met.join()) ?? meetings.push(met) - 1
    known.set(met.join(), at)
    return at
  })
  return {
    meetings,
    practices: problem.practices.map((practice) => ({
      ...shapesOf(problem, practice),
      meetingOf: practice.offers.map(({ theme }) => meetingOf[theme] ?? 0),
    })),
  }
}

function shapesOf(problem: AheadProblem, practice: AheadPractice): Omit<ShapedPractice, 'meetingOf'> {
  const shapes: AheadShape[] = []
  const known = new Map<string, number>()
  const shapeOf = practice.offers.map((offer) => {
    const key = [offer.liveSeconds, ...seatColumns.map((column) => offer.seats[column])].join()
    const at = known.get(key) ?? shapes.push(shapeFor(problem, practice, offer)) - 1
    known.set(key, at)
    return at
  })
  return { shapes, shapeOf }
}

function shapeFor(problem: AheadProblem, practice: AheadPractice, offer: Offer): AheadShape {
  const even = evenSeats(problem, practice, offer).map((own) =>
    seatColumns.map((column) => own[column] / secondsInMinute),
  )
  const live = offer.liveSeconds / secondsInMinute
  return {
    even,
    plays: even.map((own) => own.reduce((all, one) => all + one, 0)),
    there: problem.players.map((_, player) => (practice.comes[player] ?? 0) * live),
    live,
  }
}
