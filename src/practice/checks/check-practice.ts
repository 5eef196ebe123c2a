import { checkOneSeatEach } from '#practice/checks/one-seat-each'
import type { PracticeFault } from '#practice/checks/practice-fault'
import { checkSeatedWhilePresent } from '#practice/checks/seated-while-present'
import { checkTurnInsidePractice } from '#practice/checks/turn-inside-practice'
import { checkTurnLength } from '#practice/checks/turn-length'
import { checkTurnOrder } from '#practice/checks/turn-order'
import type { Practice } from '#practice/practice'

/** Everything that is wrong with the turns of a practice; nothing when its book can be made. */
export function checkPractice(
  practice: Pick<Practice, 'lengthSeconds' | 'register' | 'turns'>,
): readonly PracticeFault[] {
  return [
    ...checkTurnLength(practice.turns),
    ...checkTurnOrder(practice.turns),
    ...checkTurnInsidePractice(practice.turns, practice.lengthSeconds),
    ...checkOneSeatEach(practice.turns),
    ...checkSeatedWhilePresent(practice),
  ].sort((a, b) => a.turn - b.turn)
}
