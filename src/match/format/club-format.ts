import type { MatchFormat } from '#match/format/match-format'

export type FormatId = string

/** A format as a club has it. */
export type ClubFormat = {
  readonly id: FormatId
  readonly format: MatchFormat
  /** Key of the published one it was taken over from; null: written by hand. */
  readonly takenFrom: string | null
  /** Offered no more. */
  readonly isPutAway: boolean
}
