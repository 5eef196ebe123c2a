import 'server-only'
import type { FlagState } from '#data/flag-states'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { flagRules } from '#fairness/flags/registry'
import type { SessionKind } from '#fairness/standing'
import { dayIn } from '#server/today'
import type { Term } from '#squad/squad'

type Counts = { readonly open: number; readonly answered: number; readonly cleared: number }

export type FlagCounts = Counts & { readonly byKind: Readonly<Record<SessionKind, Counts>> }

const quiet = new Set(flagRules.filter((rule: FlagRule) => rule.isQuiet).map((rule) => rule.name as string))

/**
 * Flags that began by the end of a term and did not clear before it, as they stand today. Quiet notes are in no count.
 */
export function flagsOfTerm(
  flags: readonly Pick<FlagState, 'rule' | 'scope' | 'since' | 'status' | 'clearedAt'>[],
  { term, timeZone }: { readonly term: Pick<Term, 'firstDay' | 'lastDay'>; readonly timeZone: string },
): FlagCounts {
  const ofTerm = flags.filter(({ rule, since, clearedAt }) => {
    if (quiet.has(rule) || since > term.lastDay) return false
    return clearedAt === null || dayIn(timeZone, clearedAt) >= term.firstDay
  })
  const ofKind = (kind: SessionKind) => countsOf(ofTerm.filter(({ scope }) => scope === kind))
  return { ...countsOf(ofTerm), byKind: { practice: ofKind('practice'), match: ofKind('match') } }
}

function countsOf(flags: readonly Pick<FlagState, 'status'>[]): Counts {
  const count = (wanted: FlagState['status']) => flags.filter(({ status }) => status === wanted).length
  return { open: count('open'), answered: count('acknowledged'), cleared: count('cleared') }
}
