import type { LineUpProblem } from '#lineup/problem'
import type { LineUpFault } from '#lineup/rule'

/** The rules that are asked for, or that players' own rights make: those that may have left no line-up together. */
export function rulesInForce(problem: LineUpProblem): readonly LineUpFault['rule'][] {
  const { rules, players, apart, fixed } = problem
  const asked: readonly (readonly [LineUpFault['rule'], boolean])[] = [
    ['keeper', players.some(({ keeps }) => !keeps)],
    ['mostSeconds', players.some(({ mostSeconds }) => mostSeconds !== null)],
    ['keeperForPeriod', rules.keeperForPeriod],
    ['mostKeeperPeriods', rules.mostKeeperPeriods !== null],
    ['leastSpell', rules.leastSpellSeconds > 0],
    ['longestSpell', rules.longestSpellSeconds !== null],
    ['longestOff', rules.longestOffSeconds !== null],
    ['mostChanges', rules.mostChanges !== null],
    ['mostSubstitutions', rules.mostSubstitutions !== null],
    ['mayReturn', !rules.mayReturn],
    ['apart', apart.length > 0],
    ['fixed', fixed.length > 0],
    ['notYet', players.some(({ wishes }) => Object.values(wishes).includes('notYet'))],
  ]
  return asked.flatMap(([rule, isAsked]) => (isAsked ? [rule] : []))
}
