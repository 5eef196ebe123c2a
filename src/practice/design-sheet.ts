import type { Adaptation } from '#practice/adaptation'
import type { DesignId, PracticeDesign } from '#practice/design'

export const areaUnits = ['m', 'yd'] as const
export type AreaUnit = (typeof areaUnits)[number]

/** A design as it stands in the club's library: the practice, where it is played, and how it is made harder or easier. */
export type DesignSheet = PracticeDesign & {
  /** Of everything that is marked out, however many areas it is divided into; in metres. */
  readonly areaLengthM: number
  readonly areaWidthM: number
  /** The unit it was written in and is shown in. */
  readonly areaUnit: AreaUnit
  /** Two halves that mirror each other, their goals back to back in the middle. */
  readonly isMirrored: boolean
  /** Heading the ball is part of it. */
  readonly hasHeading: boolean
  readonly adaptations: readonly Adaptation[]
  readonly note: string
  readonly copiedFromId: DesignId | null
  /** Put away: offered no more, kept for the practices that used it. */
  readonly isPutAway: boolean
}

/** A practice with its area, and nothing of the library yet. */
export const plainSheet = {
  sides: null,
  areaUnit: 'm',
  isMirrored: false,
  hasHeading: false,
  adaptations: [],
  note: '',
  copiedFromId: null,
  isPutAway: false,
} as const satisfies Partial<DesignSheet>
