import type { PracticeFault } from '#practice/checks/practice-fault'
import { seatsOfTurn } from '#practice/checks/seats-of-turn'
import type { Practice } from '#practice/practice'
import { isPresentThroughout, joinPresence } from '#squad/joined-presence'

/** Whoever has a seat in a turn is there for all of it. */
export function checkSeatedWhilePresent(
  practice: Pick<Practice, 'register' | 'turns'>,
): readonly PracticeFault[] {
  const joined = joinPresence(practice.register)
  return practice.turns.flatMap((own, turn) =>
    seatsOfTurn(own).flatMap(({ playerId, ...seat }): readonly PracticeFault[] =>
      isPresentThroughout(joined, playerId, { from: own.start, to: own.end })
        ? []
        : [{ rule: 'seatedWhileAway', turn, playerId, seat }],
    ),
  )
}
