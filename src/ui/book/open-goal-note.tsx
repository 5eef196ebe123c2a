import type { Role } from '#exposure/column'
import { wholeMinutes } from '#ui/figures/minutes'

/** Goal can hide everything: beside anyone over a third of the time there, what would be due if all took a turn. */
export function OpenGoalNote({ openGoal }: { readonly openGoal: Readonly<Record<Role, number>> }) {
  return (
    <p className="text-sm">
      In goal for over a third of the time there. If everyone took a turn there, an even share would be{' '}
      {wholeMinutes(openGoal.attack)} min of attack, {wholeMinutes(openGoal.defend)} min of defence and{' '}
      {wholeMinutes(openGoal.keep)} min in goal.
    </p>
  )
}
