import { matchSpans } from '#exposure/match-spans'
import type { SessionAccount } from '#fairness/account'
import { type AccountRules, accountLines, accountPresences, liveSecondsOf } from '#fairness/account-spans'
import type { Match } from '#match/match'
import type { RegisterLine } from '#squad/register'

/**
 * Folds a match into its account: keeper → keep, back → defend, forward → attack, bench → rest, and the middle split
 * between attack and defend, both rows keeping `line: 'middle'`. A match that was not written has attendance and
 * nothing else: without spells everyone would seem to have waited.
 * `register`: all its lines, those of players who were there without playing too; left out, the match's own.
 * @throws InvariantError when the books do not balance: a player in two lines, or in a line while away.
 */
export function accountMatch(
  match: Match,
  rules: AccountRules,
  register: readonly RegisterLine[] = match.register.map((line) => ({ ...line, state: 'here' })),
): SessionAccount {
  const spans = rules.written === 'notWritten' ? [] : matchSpans(match)
  return {
    sessionId: match.id,
    day: match.day,
    kind: 'match',
    written: rules.written,
    liveSeconds: liveSecondsOf(spans),
    lines: accountLines(spans, rules),
    presences: accountPresences(spans, register, rules.members),
  }
}
