import type { KindStanding } from '#fairness/standing'
import { seatRoles } from '#practice/turn'
import { counted, listed } from '#ui/plural'
import { words } from '#ui/words'

/** Turns offered and passed, e.g. "Was offered 2 turns of attack and 1 turn in goal, and passed." Null when there were none. */
export function passedSentence(passed: KindStanding['passed']): string | null {
  const parts = seatRoles
    .filter((role) => passed[role].turns > 0)
    .map((role) => `${counted(passed[role].turns, 'turn')} ${words.doing[role]}`)
  if (parts.length === 0) return null
  return `Was offered ${listed(parts)}, and passed. They are a part of the difference and stay in it.`
}

/** Who got to choose is itself a turn to share. Null when nobody was given a choice. */
export function choiceSentence({
  chose,
  choiceTurns,
}: {
  readonly chose: number
  readonly choiceTurns: number
}): string | null {
  if (choiceTurns === 0) return null
  return `Was of the side that got to choose in ${chose} of ${counted(choiceTurns, 'turn')} with a choice.`
}
