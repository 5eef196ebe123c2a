import type { Day } from '#common/time'

export const rosterFields = [
  'name',
  'firstName',
  'lastName',
  'shirt',
  'code',
  'keeps',
  'wantsToKeep',
  'firstDay',
  'lastDay',
] as const
export type RosterField = (typeof rosterFields)[number]

/** One player as a row of a roster tells of it; null: the row says nothing of it. */
export type RosterEntry = {
  readonly name: string
  /** Only tells players of one name apart; it is not kept. */
  readonly shirt: string | null
  readonly code: string | null
  readonly keeps: boolean | null
  readonly wantsToKeep: boolean | null
  readonly firstDay: Day | null
  readonly lastDay: Day | null
}
