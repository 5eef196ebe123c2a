import { daysLater } from '#common/days-later'
import type { Day } from '#common/time'
import type { PlannedPlayer, PracticePlan } from '#planning/practice-plan'
import { isInSides } from '#planning/side-lists'

/** What was set for one practice is kept at most so many days after it. As long as a guest's name; our own judgement. */
const keptDays = 28

/** Practices of this day or before it have had theirs forgotten by `today`, written into the book or not. */
export function lastDayForgotten(today: Day): Day {
  return daysLater(today, -keptDays)
}

/**
 * A plan once its practice is over: who was where in it, and nothing of what was set for that day alone or agreed with
 * single children: limits, places held fast, pairs, sides of their own. What was proven around that is not said any more.
 */
export function withoutToday(plan: PracticePlan): PracticePlan {
  const { design, rules, turns, proof } = plan
  const areSided = isInSides(plan)
  const players = plan.players.map((player) => withoutOwn(player, areSided))
  const plain: PracticePlan = { design, players, rules, apart: [], together: [], locks: [], turns, proof }
  const isPlain = JSON.stringify(plain.players) === JSON.stringify(plan.players) && hasNoPairs(plan)
  return isPlain
    ? plain
    : {
        ...plain,
        proof: { ...proof, sentence: 'A plan of a practice that is over.', bound: 0, proven: false },
      }
}

function hasNoPairs({ apart, together, mayMeet = [], locks }: PracticePlan): boolean {
  return apart.length + together.length + mayMeet.length + locks.length === 0
}

function withoutOwn(
  { playerId, keeps, side, present, gap }: PlannedPlayer,
  areSided: boolean,
): PlannedPlayer {
  return {
    playerId,
    keeps,
    side: areSided ? side : null,
    present,
    notInGoal: false,
    waitsAfterEachTurn: false,
    mostTurns: null,
    gap,
  }
}
