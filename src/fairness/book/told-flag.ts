import type { Day } from '#common/time'
import { cureSentence } from '#fairness/flags/cure'
import type { FlagRule, SubjectNames } from '#fairness/flags/flag-rule'
import type { Flag } from '#fairness/flags/raise-flags'
import { flagRules } from '#fairness/flags/registry'
import type { Term } from '#squad/squad'
import type { Theme } from '#themes/theme'

/** A flag in its rule's own words, for coaches' pages. */
export type ToldFlag = {
  readonly rule: FlagRule['name']
  readonly scope: Flag['scope']
  readonly title: string
  readonly sentence: string
  readonly cure: string
  readonly since: Day
  readonly isClosing: boolean
  /** A note for the player's own page, in no count. */
  readonly isQuiet: boolean
}

export type TellableFlag = Pick<
  Flag,
  'rule' | 'scope' | 'subject' | 'gapSeconds' | 'toleranceSeconds' | 'size' | 'since' | 'isClosing' | 'cure'
>

/** Names for the words of the rules; a theme or term that is not there has none. `terms`: of the season the flags are of. */
export function subjectNames(of: {
  readonly themes: readonly Pick<Theme, 'id' | 'name'>[]
  readonly terms: readonly Pick<Term, 'id' | 'name'>[]
}): SubjectNames {
  const nameIn = (named: readonly { readonly id: string; readonly name: string }[], id: string) =>
    named.find((one) => one.id === id)?.name ?? ''
  return { themeName: (id) => nameIn(of.themes, id), termName: (id) => nameIn(of.terms, id) }
}

/** Null for a rule that is no longer kept. */
export function tellFlag(flag: TellableFlag, names: SubjectNames): ToldFlag | null {
  const rule: FlagRule | undefined = flagRules.find((one) => one.name === flag.rule)
  if (!rule) return null
  return {
    rule: rule.name,
    scope: flag.scope,
    title: rule.title,
    sentence: rule.sentence(flag, names),
    cure: cureSentence(flag.cure, rule.advice),
    since: flag.since,
    isClosing: flag.isClosing,
    isQuiet: rule.isQuiet ?? false,
  }
}
