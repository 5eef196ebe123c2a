import type { FlagRule } from '#fairness/flags/flag-rule'
import { minutesInWords, timesInWords } from '#fairness/flags/plain-words'
import { keepsOn } from '#squad/keeps-change'

/** Counts as able when put in goal, so its gaps read zero: this rule looks at the goal and nothing else, every time. */
export const rule: FlagRule = {
  name: 'keptUnwillingly',
  scopes: ['practice', 'match'],
  title: 'In goal although marked not to',
  sentence: (finding) =>
    `Was put in goal ${timesInWords(finding.size)}, ${minutesInWords(finding.gapSeconds)} in all, although marked not to keep.`,
  cureGroup: 'goal',
  advice: 'Somebody else in goal, every time.',
  speaksEarly: true,
  sizeIn: 'times',
  judge: (standing, { player, keepsChanges }) => {
    const kept = standing.attended.filter(
      ({ keepSeconds, day }) => keepSeconds > 0 && !keepsOn(player, { changes: keepsChanges, day }),
    )
    if (kept.length === 0) return []
    return [
      {
        subject: '',
        gapSeconds: kept.reduce((sum, { keepSeconds }) => sum + keepSeconds, 0),
        toleranceSeconds: 0,
        size: kept.length,
        sessionIds: kept.map((session) => session.sessionId),
      },
    ]
  },
}
