import { seatColumns } from '#ahead/seat-column'
import { type AheadFrame, type Entry, entry, overOffers, overShapes } from '#solver/ahead-frame'
import type { AheadShape } from '#solver/ahead-shapes'

/** Columns of what is shared out evenly, by bin and player: a column for each seat column, null where there is none. */
export type EvenColumns = readonly (readonly (readonly (number | null)[])[])[]

/** Differences smaller than these are none, in minutes. */
const nothing = 1e-9

/**
 * The even shares of a bin. Whoever may keep has one rate of every seat for each minute that it is expected, the others
 * another one. So the rates are summed up once, and a player's row has only the practices to which it comes more or less
 * often than usually.
 */
export function addEven(frame: AheadFrame): EvenColumns {
  const { linear, problem, bins } = frame
  const free = { lower: Number.NEGATIVE_INFINITY, upper: Number.POSITIVE_INFINITY, isWhole: false }
  return bins.map((bin) => {
    const examples = [true, false].map((keeps) => problem.players.findIndex((own) => own.keeps === keeps))
    const rates = seatColumns.map((_, column) =>
      [true, false].map((keeps) => {
        const entries = overShapes(frame, bin, (shape, practice) =>
          rateOf(frame, { shape, practice, column, keeps }),
        )
        if (entries.length === 0 || examples[keeps ? 0 : 1] === -1) return null
        const own = linear.addColumn(free)
        linear.addRow({ lower: 0, upper: 0 }, [
          [own, 1],
          ...entries.map(([at, value]) => [at, -value] as const),
        ])
        return own
      }),
    )
    return problem.players.map(({ keeps }, player) => {
      const usual = usualChance(frame, player)
      return seatColumns.map((_, column) => {
        const isAny = bin.some((practice) =>
          frame.shapes.practices[practice]?.shapes.some((shape) => (shape.even[player]?.[column] ?? 0) > 0),
        )
        if (!isAny) return null
        const own = linear.addColumn({ upper: Number.POSITIVE_INFINITY, isWhole: false })
        linear.addRow({ lower: 0, upper: 0 }, [
          [own, -1],
          ...entry(rates[column]?.[keeps ? 0 : 1], usual),
          ...overShapes(frame, bin, (shape, practice) => {
            const as = usual * rateOf(frame, { shape, practice, column, keeps })
            return exactly((shape.even[player]?.[column] ?? 0) - as)
          }),
        ])
        return own
      })
    })
  })
}

/** Time that a player is there in practices of a meeting: as often as usually, and what the single practices differ. */
export function thereEntries(
  frame: AheadFrame,
  {
    live,
    bin,
    player,
    meets,
  }: {
    /** The column of the bin's time in the meeting. */
    readonly live: number
    readonly bin: readonly number[]
    readonly player: number
    readonly meets: (meeting: number) => boolean
  },
): readonly Entry[] {
  const usual = usualChance(frame, player)
  return [
    ...entry(live, usual),
    ...overOffers(frame, bin, {
      meets,
      figure: (shape) => exactly((shape.there[player] ?? 0) - usual * shape.live),
    }),
  ]
}

/** Seats of a column for each minute that somebody is expected; 0 where none of its kind is. */
function rateOf(
  { problem }: AheadFrame,
  asked: {
    readonly shape: AheadShape
    readonly practice: number
    readonly column: number
    readonly keeps: boolean
  },
): number {
  const { shape, practice, column, keeps } = asked
  const { comes = [] } = problem.practices[practice] ?? {}
  const one = problem.players.findIndex((own, player) => own.keeps === keeps && (comes[player] ?? 0) > 0)
  return one < 0 ? 0 : (shape.even[one]?.[column] ?? 0) / (comes[one] ?? 1)
}

/** The chance to come that a player has in most practices. */
function usualChance({ problem }: AheadFrame, player: number): number {
  return Math.max(0, ...problem.practices.map(({ comes }) => comes[player] ?? 0))
}

function exactly(minutes: number): number {
  return Math.abs(minutes) < nothing ? 0 : minutes
}
