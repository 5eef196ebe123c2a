import { judgeColumn } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { differenceSentence } from '#fairness/flags/plain-words'

export const rule: FlagRule = {
  name: 'restOver',
  scopes: ['practice'],
  title: 'Much waiting',
  sentence: (finding) => differenceSentence(finding, 'waiting'),
  cureGroup: 'waiting',
  speaksEarly: false,
  sizeIn: 'seconds',
  isHelpedBy: (place) => place.role !== 'keep',
  judge: (standing, { policy }) => judgeColumn({ figure: standing.roles.rest, side: 'over', policy }),
}
