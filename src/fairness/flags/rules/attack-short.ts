import { judgeColumn } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { hasMatchesForRoles } from '#fairness/flags/matches-for-roles'
import { differenceSentence } from '#fairness/flags/plain-words'

export const rule: FlagRule = {
  name: 'attackShort',
  scopes: ['practice', 'match'],
  title: 'Little attacking',
  sentence: (finding) => differenceSentence(finding, 'attacking'),
  cureGroup: 'attack',
  speaksEarly: false,
  sizeIn: 'seconds',
  isHelpedBy: (place) => place.role === 'attack',
  judge: (standing, { policy, scope }) =>
    hasMatchesForRoles({ sessions: standing.attended.length, kind: scope, policy })
      ? judgeColumn({ figure: standing.roles.attack, side: 'short', policy })
      : [],
}
