import type { Seconds } from '#common/time'
import type { Line } from '#match/match'

/** How many play in each line. */
export type LinePlaces = Readonly<Record<Line, number>>

/** A way to share the places out over the lines: 2-3-1 of seven a side with a keeper. */
export type Shape = { readonly name: string; readonly places: LinePlaces }

/** Least time that every player is promised in each match. Whatever of it is set holds; where more is, the more counts. */
export type LeastTime = {
  /** Part of the time for which a player is there, 0 to 1; null: the club's policy says. */
  readonly share: number | null
  /** Whole periods for a player who is there throughout; null: none. */
  readonly periods: number | null
  /** Whole periods for whoever comes during a period (from 1), instead of the above; in order of the period. */
  readonly late: readonly { readonly arrivesIn: number; readonly periods: number }[]
  /** Where the numbers forbid it, as much of it as everybody can have. */
  readonly wherePossible: boolean
}

/** Which body says so, for which season, and where it was read. */
export type FormatSource = {
  readonly body: string
  readonly season: string
  readonly readAt: string
  /** Written from memory: to be checked before it is relied on. */
  readonly isFromMemory: boolean
}

/**
 * How matches of an age are played. A rule of a body, never of this program: every value is the club's to change, and
 * local rules win.
 */
export type MatchFormat = {
  readonly name: string
  /** Upper ages of the squads it is for, both included; null: any. */
  readonly ages: readonly [number, number] | null
  /** On the pitch at once, keeper included. */
  readonly aSide: number
  readonly hasKeeper: boolean
  /** Of one match, in order; many for a day of short games. */
  readonly periodSeconds: readonly Seconds[]
  readonly breakSeconds: Seconds
  /** Each period is a game of its own: a day of short games. */
  readonly isShortGames: boolean
  /** Players who may come on in a match, at breaks too; null: as many as one likes. */
  readonly mostSubstitutions: number | null
  /** Changes only between periods. */
  readonly changesAtBreaksOnly: boolean
  /** Whoever came off may come on again. */
  readonly mayReturn: boolean
  readonly leastTime: LeastTime
  /** Periods of a match in which one player may keep goal; null: all. */
  readonly mostKeeperPeriods: number | null
  /** Playing time of one player in one day, all its matches together; null: no limit. */
  readonly mostSecondsADay: Seconds | null
  /** Players on the list of a match; null: any number. */
  readonly mostPlayers: number | null
  /** With fewer a match is not begun; null: nobody says. */
  readonly fewestPlayers: number | null
  /** The first is the one to begin with. */
  readonly shapes: readonly Shape[]
  readonly source: FormatSource | null
  readonly note: string
}
