import { judgeColumn } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { differenceSentence } from '#fairness/flags/plain-words'

export const rule: FlagRule = {
  name: 'matchOffOver',
  scopes: ['match'],
  title: 'Much time off in matches',
  sentence: (finding) => differenceSentence(finding, 'time off in matches'),
  cureGroup: 'match',
  speaksEarly: false,
  sizeIn: 'seconds',
  judge: (standing, { policy }) => judgeColumn({ figure: standing.roles.rest, side: 'over', policy }),
}
