import type { Day } from '#common/time'
import type { Match } from '#match/match'
import type { Practice } from '#practice/practice'
import type { PlayerId } from '#squad/player'
import type { Policy } from '#squad/policy'
import type { ThemeId } from '#themes/theme'

/** A whole season of one squad as it was written down: what its ledger is made of. */
export type SeasonLog = {
  readonly policy: Pick<Policy, 'toleranceSeconds' | 'toleranceShare' | 'middleAttackShare'>
  readonly players: readonly LoggedPlayer[]
  /** A turn's theme need not be among them. */
  readonly themes: readonly LoggedTheme[]
  readonly practices: readonly LoggedPractice[]
  readonly matches: readonly Match[]
}

/** Names and titles are null where nobody gave one. */
export type LoggedPlayer = { readonly id: PlayerId; readonly keeps: boolean; readonly name: string | null }
export type LoggedTheme = {
  readonly id: ThemeId
  readonly name: string | null
  readonly parentId: ThemeId | null
}
export type LoggedPractice = Practice & { readonly title: string | null }

/** The day of the last session of a log; null of an empty one. */
export function lastDayOf(log: {
  readonly practices: readonly { readonly day: Day }[]
  readonly matches: readonly { readonly day: Day }[]
}): Day | null {
  const days = [...log.practices, ...log.matches].map(({ day }) => day)
  return days.reduce<Day | null>((last, day) => (last !== null && last >= day ? last : day), null)
}
