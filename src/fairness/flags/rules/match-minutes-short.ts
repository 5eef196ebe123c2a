import { judgeColumn } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { differenceSentence } from '#fairness/flags/plain-words'
import { playedFigure } from '#fairness/standing'

export const rule: FlagRule = {
  name: 'matchMinutesShort',
  scopes: ['match'],
  title: 'Few minutes played in matches',
  sentence: (finding) => differenceSentence(finding, 'played in matches'),
  cureGroup: 'match',
  speaksEarly: false,
  sizeIn: 'seconds',
  replaces: ['matchOffOver'],
  judge: (standing, { policy }) => judgeColumn({ figure: playedFigure(standing), side: 'short', policy }),
}
