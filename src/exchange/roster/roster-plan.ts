import type { Dated } from '#common/dated'
import type { Day } from '#common/time'
import type { KnownPlayer, MatchQuestion } from '#exchange/players/match-player'
import type { RosterEntry } from '#exchange/roster/roster-entry'
import type { PlayerId } from '#squad/player'

export type MemberDays = Dated

/** What an import changes on a player the book has already. */
export type PlayerChange =
  | { readonly kind: 'joins'; readonly days: MemberDays }
  | { readonly kind: 'ends'; readonly lastDay: Day }
  | { readonly kind: 'keeps'; readonly to: boolean }
  | { readonly kind: 'wantsToKeep'; readonly to: boolean }

/** What the file says and the book keeps otherwise; told, not changed. */
export type PlayerNote = 'otherFirstDay' | 'otherLastDay' | 'leftBefore'

export type RosterQuestion =
  | { readonly why: MatchQuestion | 'oneForTwoRows'; readonly candidates: readonly KnownPlayer[] }
  | { readonly why: 'sameNameTwice'; readonly line: number; readonly candidates: readonly [] }

/** What becomes of one row. `new` and `known` are written; a `question` or a `problem` holds the whole import up. */
export type RosterOutcome =
  | { readonly kind: 'new'; readonly entry: RosterEntry; readonly days: MemberDays }
  /** The player of an earlier row, for other days. */
  | { readonly kind: 'again'; readonly line: number; readonly days: MemberDays }
  | {
      readonly kind: 'known'
      readonly playerId: PlayerId
      readonly changes: readonly PlayerChange[]
      readonly notes: readonly PlayerNote[]
    }
  | { readonly kind: 'doubled'; readonly line: number }
  | { readonly kind: 'question'; readonly question: RosterQuestion }
  | { readonly kind: 'problem'; readonly problems: readonly string[] }
  | { readonly kind: 'passedOver'; readonly why: string }
  | { readonly kind: 'leftOut' }

export type RosterPlan = readonly { readonly line: number; readonly outcome: RosterOutcome }[]

/** Whether all of it can be written: no open question, no problem, and something to write. */
export function isReady(plan: RosterPlan): boolean {
  return (
    plan.every(({ outcome }) => outcome.kind !== 'question' && outcome.kind !== 'problem') &&
    plan.some(isWritten)
  )
}

function isWritten({ outcome }: RosterPlan[number]): boolean {
  return (
    outcome.kind === 'new' ||
    outcome.kind === 'again' ||
    (outcome.kind === 'known' && outcome.changes.length > 0)
  )
}
