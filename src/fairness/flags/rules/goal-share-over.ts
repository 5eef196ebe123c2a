import type { FlagRule } from '#fairness/flags/flag-rule'
import { minutesInWords } from '#fairness/flags/plain-words'
import { noise } from '#fairness/noise'
import { timeInTerm } from '#fairness/standing'

/** A lone keeper is due all of goal, so its gaps read zero: this rule looks at the part of its time instead. */
export const rule: FlagRule = {
  name: 'goalShareOver',
  scopes: ['practice', 'match'],
  title: 'In goal for most of the term',
  sentence: (finding, { termName }) =>
    `In goal for ${minutesInWords(finding.gapSeconds)} more in “${termName(finding.subject)}” than the club’s rule allows.`,
  cureGroup: 'goal',
  speaksEarly: true,
  sizeIn: 'seconds',
  judge: (standing, { policy, term }) => {
    if (term === null) return []
    const { liveSeconds, keepSeconds } = timeInTerm(standing, term)
    const gapSeconds = keepSeconds - policy.goalShareLimit * liveSeconds
    if (gapSeconds <= noise) return []
    return [
      {
        subject: term.id,
        gapSeconds,
        toleranceSeconds: 0,
        size: gapSeconds,
        gainPerTurn: policy.goalShareLimit,
      },
    ]
  },
}
