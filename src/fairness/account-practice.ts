import { practiceSpans } from '#exposure/practice-spans'
import type { SessionAccount } from '#fairness/account'
import { type AccountRules, accountLines, accountPresences, liveSecondsOf } from '#fairness/account-spans'
import type { Practice } from '#practice/practice'
import type { RegisterLine } from '#squad/register'

/**
 * Folds a practice into its account. A practice that was not written has attendance and nothing else.
 * `register`: all its lines, those of players who were there without playing too; left out, the practice's own.
 * @throws InvariantError when the books do not balance: a player in two seats, or seated while away.
 */
export function accountPractice(
  practice: Practice,
  rules: AccountRules,
  register: readonly RegisterLine[] = practice.register.map((line) => ({ ...line, state: 'here' })),
): SessionAccount {
  const spans = rules.written === 'notWritten' ? [] : practiceSpans(practice)
  return {
    sessionId: practice.id,
    day: practice.day,
    kind: 'practice',
    written: rules.written,
    liveSeconds: liveSecondsOf(spans),
    lines: accountLines(spans, rules),
    presences: accountPresences(spans, register, rules.members),
  }
}
