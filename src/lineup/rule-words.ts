import type { LineUpFault } from '#lineup/rule'

/** A rule as something that is asked: "No line-up keeps all of this at once: …". */
export const ruleWords: Readonly<Record<LineUpFault['rule'], string>> = {
  places: 'every place filled',
  keeper: 'only who may keep goal in goal',
  presence: 'nobody on who is not there',
  mostSeconds: 'the limit on time in one day',
  keeperForPeriod: 'one keeper for a whole period',
  mostKeeperPeriods: 'the limit on periods in goal',
  leastSpell: 'the least time on before coming off',
  longestSpell: 'the longest time on',
  longestOff: 'the longest time off',
  mostChanges: 'the number of changes',
  mostSubstitutions: 'the number of players who may come on',
  mayReturn: 'nobody coming back who came off',
  apart: 'the pairs kept apart',
  fixed: 'the places that are held',
  notYet: 'the lines that are not played yet',
}
