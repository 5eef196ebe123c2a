import { situations } from '#exposure/column'
import { judgeColumn } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { differenceSentence, situationInWords } from '#fairness/flags/plain-words'

export const rule: FlagRule = {
  name: 'situationShort',
  scopes: ['practice'],
  title: 'Little of one situation',
  sentence: (finding) => differenceSentence(finding, `time with ${situationInWords(finding.subject)}`),
  cureGroup: 'situation',
  speaksEarly: false,
  sizeIn: 'seconds',
  isHelpedBy: (place, { subject }) => place.situation === subject,
  judge: (standing, { policy }) =>
    situations.flatMap((subject) =>
      judgeColumn({ figure: standing.situations[subject], side: 'short', policy, subject }),
    ),
}
