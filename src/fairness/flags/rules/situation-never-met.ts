import { situations } from '#exposure/column'
import { judgeColumn, withoutTurnGap } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { minutesInWords, situationInWords } from '#fairness/flags/plain-words'

export const rule: FlagRule = {
  name: 'situationNeverMet',
  scopes: ['practice'],
  title: 'A situation never met',
  sentence: (finding) =>
    `Never had ${situationInWords(finding.subject)}; an even share would have been ${minutesInWords(finding.gapSeconds)}.`,
  cureGroup: 'situation',
  speaksEarly: false,
  sizeIn: 'seconds',
  replaces: ['situationShort'],
  isHelpedBy: (place, { subject }) => place.situation === subject,
  judge: (standing, { policy }) =>
    situations
      .filter((subject) => standing.situations[subject].seconds === 0)
      .flatMap((subject) =>
        judgeColumn({ figure: standing.situations[subject], side: 'short', policy, subject }),
      )
      .map(withoutTurnGap),
}
