import { judgeColumn } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { differenceSentence } from '#fairness/flags/plain-words'

export const rule: FlagRule = {
  name: 'keepShort',
  scopes: ['practice', 'match'],
  title: 'Wants to keep, little time in goal',
  sentence: (finding) => differenceSentence(finding, 'time in goal'),
  cureGroup: 'goal',
  speaksEarly: true,
  sizeIn: 'seconds',
  isHelpedBy: (place) => place.role === 'keep',
  judge: (standing, { policy, player }) =>
    player.wantsToKeep && player.keeps
      ? judgeColumn({ figure: standing.roles.keep, side: 'short', policy })
      : [],
}
