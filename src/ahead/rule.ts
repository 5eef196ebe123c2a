import type { AheadChoices } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'

export const aheadRuleNames = [
  'offered',
  'held',
  'firstWeek',
  'lastWeek',
  'after',
  'leastWeeksBetween',
  'mostWeeksBetween',
  'block',
  'designRest',
] as const
export type AheadRuleName = (typeof aheadRuleNames)[number]

/** A hard rule that choices break, in which practice, and of which theme or design. */
export type AheadFault = {
  readonly rule: AheadRuleName
  readonly practice: number
  readonly theme: number | null
}

/** An offer of a practice. */
export type Pick = { readonly practice: number; readonly offer: number }

/** A rule as conditions that a solver can hold. */
export type RuleLimits = {
  /** Never chosen. */
  readonly never: readonly Pick[]
  /** Of each list at most one is chosen. */
  readonly atMostOne: readonly (readonly Pick[])[]
  /** Where `pick` is chosen, so is at least one of `oneOf`. */
  readonly needs: readonly { readonly pick: Pick; readonly oneOf: readonly Pick[] }[]
  /** Of each list at least one is chosen, whatever else. */
  readonly atLeastOne: readonly (readonly Pick[])[]
}

/** One hard rule, said twice: as a check of choices that shares nothing with the solver, and as conditions for it. */
export type AheadRule = {
  readonly name: AheadRuleName
  readonly faults: (problem: AheadProblem, choices: AheadChoices) => readonly AheadFault[]
  readonly limits: (problem: AheadProblem) => RuleLimits
}

export const noLimits: RuleLimits = { never: [], atMostOne: [], needs: [], atLeastOne: [] }
