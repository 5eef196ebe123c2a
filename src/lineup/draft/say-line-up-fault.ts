import { andList } from '#common/and-list'
import type { LineUpProblem } from '#lineup/problem'
import type { LineUpFault } from '#lineup/rule'
import { sayClock, sayTime } from '#lineup/say-clock'

/** A rule that a line-up breaks, in a coach's words: who, when, and what would be right. */
export function sayLineUpFault(
  problem: LineUpProblem,
  { rule, window, players }: LineUpFault,
  nameOf: (player: string) => string,
): string {
  const names = players.map((player) => nameOf(problem.players[player]?.id ?? ''))
  const who = names.length > 0 ? andList(names) : 'Somebody'
  const is = names.length > 1 ? 'are' : 'is'
  const at = `At ${sayClock(problem.windows[window]?.start ?? 0)}`
  const { rules } = problem
  const said: Readonly<Record<LineUpFault['rule'], string>> = {
    places: `${at} not every line has as many players as it has places.`,
    keeper: `${at} ${who} ${is} in goal without being among those who may keep goal.`,
    presence: `${at} ${who} ${is} on without being there.`,
    mostSeconds: `${who} would play longer than the day allows.`,
    keeperForPeriod: `${at} the goalkeeper changes inside a period. The keeper stays for the whole period.`,
    mostKeeperPeriods: `${who} would be in goal in more than ${rules.mostKeeperPeriods ?? 0} ${rules.mostKeeperPeriods === 1 ? 'period' : 'periods'}.`,
    leastSpell: `${who} would come off after less than ${sayTime(rules.leastSpellSeconds)}, at about ${sayClock(problem.windows[window]?.start ?? 0)}.`,
    longestSpell: `${who} would be on for more than ${sayTime(rules.longestSpellSeconds ?? 0)} without a change.`,
    longestOff: `${who} would be off for more than ${sayTime(rules.longestOffSeconds ?? 0)} at a stretch.`,
    mostChanges: `There would be more than ${rules.mostChanges ?? 0} changes inside periods.`,
    mostSubstitutions: `More players would come on than the format allows: ${rules.mostSubstitutions ?? 0} in the match.`,
    mayReturn: `${who} would come on again after coming off, which the format does not allow.`,
    apart: `${at} ${who} are on together, and they are kept apart.`,
    fixed: `${at} the place of ${who} is held. Let it go first.`,
    notYet: `${at} ${who} ${is} in a line that is not for them yet.`,
  }
  return said[rule]
}
