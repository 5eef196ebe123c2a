import type { SeatSeconds } from '#ahead/seat-column'
import type { Day, Seconds } from '#common/time'
import type { DesignId } from '#practice/design'
import type { ColumnSeconds } from '#rotation/problem'
import type { PlayerId } from '#squad/player'
import type { ThemeId } from '#themes/theme'

/** A theme met by a design in one practice: what may be chosen there. Theme and design are places in the problem's lists. */
export type Offer = {
  readonly theme: number
  readonly design: number
  /** Seat seconds of all seats together, for as many as are expected. */
  readonly seats: SeatSeconds
  /** Time the ball is rolling: what everyone there has to share out over seats and waiting. */
  readonly liveSeconds: Seconds
}

/** A practice to come. Days without practice, and practices that were called off, are left out of the problem. */
export type AheadPractice = {
  readonly id: string
  readonly day: Day
  /** Of the term; the first week is 1, and weeks begin on Mondays (ISO 8601). */
  readonly week: number
  /** Designs too large for the ground, or for those expected, are not among them. */
  readonly offers: readonly Offer[]
  /** What the coach holds: only offers like it may be chosen. Null: anything. */
  readonly held: { readonly theme: number; readonly design: number | null } | null
  /** By player: the chance, 0-1, that it comes; 0 on days it is known to be away. */
  readonly comes: readonly number[]
}

export type AheadPlayer = {
  readonly id: PlayerId
  readonly keeps: boolean
  /** Share − fair share so far, practices only; negative: short. */
  readonly gap: ColumnSeconds
  /** What a gap may be at the end without being outside: from the policy and the fair share so far. */
  readonly tolerance: ColumnSeconds
  /** Time played in all practices that its gaps are of: the season's, where these are. */
  readonly gapPlayedSeconds: number
  /** Time played (not waited) in the term's practices so far: every theme is due its wished share of it. */
  readonly playedSeconds: number
  /** By theme: time played in it so far, themes under it included. */
  readonly themeSeconds: readonly number[]
  readonly themeTolerance: Seconds
}

/** A theme of the programme with its rules. Weeks are those of the term, from 1. */
export type AheadTheme = {
  readonly id: ThemeId
  readonly name: string
  /** Place in the list; null: at the top. A practice of a theme is one of all it stands under. */
  readonly parent: number | null
  /** 0-1 of the term; 0: not asked for. */
  readonly wishedShare: number
  readonly firstWeek: number | null
  readonly lastWeek: number | null
  /** Not before that theme was met in an earlier practice; a place in the list. */
  readonly after: number | null
  /** Between two practices of it lie at least so many weeks: 2 means not in the next week; null or 1: no such rule. */
  readonly leastWeeksBetween: number | null
  /** Once met it comes back at most so many weeks later, while a practice of the problem is held in time. */
  readonly mostWeeksBetween: number | null
}

/** Weeks, both belonging to it, in which only a theme and those under it are met. */
export type AheadBlock = { readonly theme: number; readonly firstWeek: number; readonly lastWeek: number }

/** A practice of the term that was held: what it met. */
export type MetPractice = {
  readonly day: Day
  readonly week: number
  readonly themes: readonly number[]
  readonly design: number | null
}

/** The practices to come of a term and what there is to choose from. Indexes are places in these lists, from 0. */
export type AheadProblem = {
  /** In order of time. */
  readonly practices: readonly AheadPractice[]
  readonly themes: readonly AheadTheme[]
  readonly blocks: readonly AheadBlock[]
  readonly designs: readonly { readonly id: DesignId; readonly name: string }[]
  readonly players: readonly AheadPlayer[]
  /** In order of time. */
  readonly met: readonly MetPractice[]
  /** A design is not chosen again in so many practices after it; 0: no such rule. */
  readonly designRest: number
  /** Nobody gets less than `least` or more than `most` times the even share of a column over the practices to come. */
  readonly gentle: { readonly least: number; readonly most: number }
}
