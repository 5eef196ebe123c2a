import { secondsInMinute } from '#common/time'
import { type EvenColumns, thereEntries } from '#solver/ahead-even-rows'
import { type AheadFrame, bentCost, type Entry, entry, overOffers } from '#solver/ahead-frame'
import type { LeanColumns } from '#solver/ahead-lean-rows'

/** Of a player: time played at the end of the plan, and by theme what costs inside and beyond the tolerance. */
export type ThemeColumns = {
  readonly played: number
  readonly short: readonly (readonly Entry[] | null)[]
}

/** Time played by bin, player and meeting; null: it is not met there. */
type MeetingColumns = readonly (readonly (readonly (number | null)[])[])[]

/** What is short of everyone's wished shares, and what it costs. */
export function addThemes(
  frame: AheadFrame,
  seats: { readonly even: EvenColumns; readonly leans: LeanColumns },
): readonly ThemeColumns[] {
  const { linear, problem, shapes } = frame
  const plays = addPlays(frame, seats)
  return problem.players.map((player, at) => {
    const played = linear.addColumn({ upper: Number.POSITIVE_INFINITY, isWhole: false })
    const so = player.playedSeconds / secondsInMinute
    const all = plays.flatMap((bin) => (bin[at] ?? []).flatMap((column) => entry(column, -1)))
    linear.addRow({ lower: so, upper: so }, [[played, 1], ...all])
    const short = problem.themes.map(({ wishedShare }, theme) => {
      if (!(wishedShare > 0)) return null
      const own = bentCost(linear, player.themeTolerance / secondsInMinute)
      // short ≥ share × played − in the theme
      linear.addRow({ lower: -(player.themeSeconds[theme] ?? 0) / secondsInMinute }, [
        ...own,
        [played, -wishedShare],
        ...plays.flatMap((bin) =>
          (bin[at] ?? []).flatMap((column, meeting) =>
            shapes.meetings[meeting]?.includes(theme) ? entry(column) : [],
          ),
        ),
      ])
      return own
    })
    return { played, short }
  })
}

/**
 * Who plays for how long when which themes are met: all seats are taken, nobody sits for longer than it is there, and
 * what it plays is its even share and its leans.
 */
function addPlays(
  frame: AheadFrame,
  { even, leans }: { readonly even: EvenColumns; readonly leans: LeanColumns },
): MeetingColumns {
  const { linear, problem, shapes, bins } = frame
  return bins.map((bin, index) => {
    const byMeeting = shapes.meetings.map((_, meeting) => {
      const meets = (other: number) => other === meeting
      const seats = overOffers(frame, bin, {
        meets,
        figure: (shape) => -shape.plays.reduce((all, one) => all + one, 0),
      })
      if (seats.length === 0) return problem.players.map(() => null)
      const live = linear.addColumn({ upper: Number.POSITIVE_INFINITY, isWhole: false })
      linear.addRow({ lower: 0, upper: 0 }, [
        [live, 1],
        ...overOffers(frame, bin, { meets, figure: (shape) => -shape.live }),
      ])
      const plays = problem.players.map((_, player) => {
        const own = linear.addColumn({ upper: Number.POSITIVE_INFINITY, isWhole: false })
        linear.addRow({ lower: 0 }, [[own, -1], ...thereEntries(frame, { live, bin, player, meets })])
        return own
      })
      linear.addRow({ lower: 0, upper: 0 }, [...seats, ...plays.map((own) => [own, 1] as const)])
      return plays
    })
    return problem.players.map((_, player) => {
      const own = byMeeting.map((plays) => plays[player] ?? null)
      const seated = [...(even[index]?.[player] ?? []), ...(leans[index]?.[player] ?? [])]
      linear.addRow({ lower: 0, upper: 0 }, [
        ...own.flatMap((column) => entry(column)),
        ...seated.flatMap((column) => entry(column, -1)),
      ])
      return own
    })
  })
}
