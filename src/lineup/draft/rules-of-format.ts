import type { LineUpRules } from '#lineup/problem'
import type { MatchFormat } from '#match/format/match-format'

/** The rules that a format brings; what it says nothing of is free, but that a keeper stays in goal for the period. */
export function rulesOfFormat(
  format: Pick<MatchFormat, 'hasKeeper' | 'mostKeeperPeriods' | 'mostSubstitutions' | 'mayReturn'>,
): LineUpRules {
  return {
    keeperForPeriod: format.hasKeeper,
    mostKeeperPeriods: format.mostKeeperPeriods,
    leastSpellSeconds: 0,
    longestSpellSeconds: null,
    longestOffSeconds: null,
    mostChanges: null,
    mostSubstitutions: format.mostSubstitutions,
    mayReturn: format.mayReturn,
  }
}
