import type { FlagRule } from '#fairness/flags/flag-rule'

const practicesRunning = 3

export const rule: FlagRule = {
  name: 'passedRunning',
  scopes: ['practice'],
  title: 'Has passed several practices running',
  sentence: (finding) => `Was offered a place and passed in each of the last ${finding.size} practices.`,
  cureGroup: 'note',
  advice: 'A quiet word, with no pressure.',
  speaksEarly: false,
  isQuiet: true,
  sizeIn: 'times',
  judge: (standing) => {
    const lastWithout = standing.attended.findLastIndex((session) => session.passedTurns === 0)
    const running = standing.attended.slice(lastWithout + 1)
    if (running.length < practicesRunning) return []
    return [
      {
        subject: '',
        gapSeconds: 0,
        toleranceSeconds: 0,
        size: running.length,
        sessionIds: running.map((session) => session.sessionId),
      },
    ]
  },
}
