import type { FlagRule } from '#fairness/flags/flag-rule'
import { minutesInWords, timesInWords } from '#fairness/flags/plain-words'
import { noise } from '#fairness/noise'

export const rule: FlagRule = {
  name: 'matchShareLeast',
  scopes: ['match'],
  title: 'Less than the least part of a match',
  sentence: (finding) =>
    `Played less of a match than the club’s rule asks for, ${timesInWords(finding.size)}: ${minutesInWords(finding.gapSeconds)} in all.`,
  cureGroup: 'match',
  advice: 'In the starting line-up next time.',
  speaksEarly: false,
  sizeIn: 'times',
  judge: (standing, { policy }) => {
    const shortOf = (session: { liveSeconds: number; playedSeconds: number }) =>
      policy.leastMatchShare * session.liveSeconds - session.playedSeconds
    const below = standing.attended.filter((session) => shortOf(session) > noise)
    if (below.length === 0) return []
    return [
      {
        subject: '',
        gapSeconds: -below.reduce((sum, session) => sum + shortOf(session), 0),
        toleranceSeconds: 0,
        size: below.length,
        sessionIds: below.map((session) => session.sessionId),
      },
    ]
  },
}
