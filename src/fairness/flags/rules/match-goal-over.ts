import { judgeColumn } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { differenceSentence } from '#fairness/flags/plain-words'

export const rule: FlagRule = {
  name: 'matchGoalOver',
  scopes: ['match'],
  title: 'Much time in goal in matches',
  sentence: (finding) => differenceSentence(finding, 'time in goal in matches'),
  cureGroup: 'goal',
  speaksEarly: true,
  sizeIn: 'seconds',
  judge: (standing, { policy }) => judgeColumn({ figure: standing.roles.keep, side: 'over', policy }),
}
