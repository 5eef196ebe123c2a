import { judgeColumn } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { hasMatchesForRoles } from '#fairness/flags/matches-for-roles'
import { differenceSentence } from '#fairness/flags/plain-words'

export const rule: FlagRule = {
  name: 'defendShort',
  scopes: ['practice', 'match'],
  title: 'Little defending',
  sentence: (finding) => differenceSentence(finding, 'defending'),
  cureGroup: 'defend',
  speaksEarly: false,
  sizeIn: 'seconds',
  isHelpedBy: (place) => place.role === 'defend',
  judge: (standing, { policy, scope }) =>
    hasMatchesForRoles({ sessions: standing.attended.length, kind: scope, policy })
      ? judgeColumn({ figure: standing.roles.defend, side: 'short', policy })
      : [],
}
