import type { FlagRule } from '#fairness/flags/flag-rule'
import { timesInWords } from '#fairness/flags/plain-words'

export const rule: FlagRule = {
  name: 'waitedInARow',
  scopes: ['practice'],
  title: 'Waited too many turns in a row',
  sentence: (finding) =>
    `Waited more turns in a row than the club’s rule allows, ${timesInWords(finding.size)}.`,
  cureGroup: 'waiting',
  advice: 'On at the next ball after each wait.',
  speaksEarly: false,
  sizeIn: 'times',
  judge: (standing, { policy }) => {
    const waits = standing.attended.filter((session) => session.longestRestTurns > policy.restLimitTurns)
    if (waits.length === 0) return []
    return [
      {
        subject: '',
        gapSeconds: 0,
        toleranceSeconds: 0,
        size: waits.length,
        sessionIds: waits.map((session) => session.sessionId),
      },
    ]
  },
}
