import type { AheadRuleName } from '#ahead/rule'

/** Why no plan keeps the rules: the rules that stand against each other, at a practice or for a theme. */
export type AheadClash = {
  readonly rules: readonly AheadRuleName[]
  /** Place in the problem's practices; null: several. */
  readonly practice: number | null
  readonly theme: number | null
}
