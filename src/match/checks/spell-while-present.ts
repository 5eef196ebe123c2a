import type { MatchFault } from '#match/checks/match-fault'
import type { Match } from '#match/match'
import { isPresentThroughout, joinPresence } from '#squad/joined-presence'

/** Whoever has a spell is there for all of it. */
export function checkSpellWhilePresent(match: Pick<Match, 'register' | 'spells'>): readonly MatchFault[] {
  const joined = joinPresence(match.register)
  return match.spells.flatMap(({ playerId, start, end }, spell): readonly MatchFault[] =>
    isPresentThroughout(joined, playerId, { from: start, to: end })
      ? []
      : [{ rule: 'spellWhileAway', spell, playerId }],
  )
}
