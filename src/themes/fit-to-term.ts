import type { ProgrammeBlock, ProgrammeRule } from '#themes/programme-rule'

/** A programme as it was, in a term of so many weeks: weeks that this term does not have bind nothing. */
export function rulesInTerm(rules: readonly ProgrammeRule[], weeks: number): readonly ProgrammeRule[] {
  return rules.map((rule) => ({
    ...rule,
    firstWeek: rule.firstWeek !== null && rule.firstWeek <= weeks ? rule.firstWeek : null,
    lastWeek: rule.lastWeek !== null && rule.lastWeek <= weeks ? rule.lastWeek : null,
  }))
}

/** Blocks that begin after the term go; one that ends after it ends with it. */
export function blocksInTerm(blocks: readonly ProgrammeBlock[], weeks: number): readonly ProgrammeBlock[] {
  return blocks
    .filter(({ firstWeek }) => firstWeek <= weeks)
    .map((block) => ({ ...block, lastWeek: Math.min(block.lastWeek, weeks) }))
}
