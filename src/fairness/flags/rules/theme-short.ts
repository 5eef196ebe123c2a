import { judgeColumn } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { differenceSentence } from '#fairness/flags/plain-words'

export const rule: FlagRule = {
  name: 'themeShort',
  scopes: ['practice'],
  title: 'Little of one theme',
  sentence: (finding, { themeName }) =>
    differenceSentence(finding, `playing in “${themeName(finding.subject)}”`),
  cureGroup: 'theme',
  speaksEarly: false,
  sizeIn: 'seconds',
  judge: (standing, { policy }) =>
    [...standing.themes].flatMap(([subject, figure]) =>
      judgeColumn({ figure, side: 'short', policy, subject }),
    ),
}
