import { judgeColumn } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { differenceSentence } from '#fairness/flags/plain-words'

export const rule: FlagRule = {
  name: 'attackShort',
  scopes: ['practice', 'match'],
  title: 'Little attacking',
  sentence: (finding) => differenceSentence(finding, 'attacking'),
  cureGroup: 'attack',
  speaksEarly: false,
  waitsForMatches: true,
  sizeIn: 'seconds',
  isHelpedBy: (place) => place.role === 'attack',
  judge: (standing, { policy }) => judgeColumn({ figure: standing.roles.attack, side: 'short', policy }),
}
