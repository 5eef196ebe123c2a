import { judgeColumn } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { differenceSentence } from '#fairness/flags/plain-words'

export const rule: FlagRule = {
  name: 'keepOver',
  scopes: ['practice'],
  title: 'Much time in goal',
  sentence: (finding) => differenceSentence(finding, 'time in goal'),
  cureGroup: 'goal',
  speaksEarly: true,
  sizeIn: 'seconds',
  judge: (standing, { policy }) => judgeColumn({ figure: standing.roles.keep, side: 'over', policy }),
}
