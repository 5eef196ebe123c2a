import type { MatchFault } from '#match/checks/match-fault'
import { checkPeriodLength, checkPeriodOrder } from '#match/checks/periods'
import { checkSpellInsidePeriod } from '#match/checks/spell-inside-period'
import { checkSpellLength } from '#match/checks/spell-length'
import { checkSpellOverlap } from '#match/checks/spell-overlap'
import { checkSpellWhilePresent } from '#match/checks/spell-while-present'
import type { Match } from '#match/match'

/** Everything that is wrong with the periods and spells of a match; nothing when its book can be made. */
export function checkMatch(match: Pick<Match, 'periods' | 'register' | 'spells'>): readonly MatchFault[] {
  return [
    ...checkPeriodLength(match.periods),
    ...checkPeriodOrder(match.periods),
    ...checkSpellLength(match.spells),
    ...checkSpellInsidePeriod(match),
    ...checkSpellOverlap(match.spells),
    ...checkSpellWhilePresent(match),
  ]
}
