import type { ChanceWord } from '#ahead/chance/chance-word'
import type { Interval } from '#common/statistics/interval'
import type { RotationColumn } from '#rotation/problem'

/** How likely something is, 0-1, and within what it lies 95 times in 100; both ends are the chance itself where it is exact. */
export type ChanceInside = Interval & { readonly chance: number; readonly word: ChanceWord }

/** How likely a player is to end inside: in all that is judged, in parts of it, in each thing alone. */
export type PlayerChances = {
  readonly all: ChanceInside
  /** Every role and situation. */
  readonly seats: ChanceInside
  /** Every theme that is asked for. */
  readonly themes: ChanceInside
  readonly columns: Readonly<Record<RotationColumn, ChanceInside>>
  /** In the order of the problem's themes; of one that is not asked for it is certain. */
  readonly byTheme: readonly ChanceInside[]
}

/** What may come of the rest of a term, one way. */
export type WayChances = {
  /** In the order of the problem's players. */
  readonly players: readonly PlayerChances[]
  /** That everyone ends inside in all that is judged. */
  readonly everyone: ChanceInside
  /** How many players end inside, on average: in all, and in roles and situations alone. */
  readonly meanInside: { readonly all: number; readonly seats: number }
}

export type Chances = {
  /** Every way in which players may come or stay away was gone through; else so many were drawn. */
  readonly isExact: boolean
  /** Rest of terms played through. */
  readonly played: number
  readonly plan: WayChances
  /** Shared out as so far, themes as so far; null: nothing was played so far that could be carried on. */
  readonly carryOn: WayChances | null
}

export type ChanceOptions = { readonly seed: number; readonly draws: number }
