import { judgeColumn } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { differenceSentence } from '#fairness/flags/plain-words'

export const rule: FlagRule = {
  name: 'defendShort',
  scopes: ['practice', 'match'],
  title: 'Little defending',
  sentence: (finding) => differenceSentence(finding, 'defending'),
  cureGroup: 'defend',
  speaksEarly: false,
  waitsForMatches: true,
  sizeIn: 'seconds',
  isHelpedBy: (place) => place.role === 'defend',
  judge: (standing, { policy }) => judgeColumn({ figure: standing.roles.defend, side: 'short', policy }),
}
