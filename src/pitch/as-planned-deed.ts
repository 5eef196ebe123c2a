import type { Deed } from '#pitch/pitch-event'
import type { PlannedTurn } from '#planning/practice-plan'
import type { PlayerId } from '#squad/player'

/** The answer to one question after a practice that nobody tapped. Rounds are places in the plan's list, from 0. */
export type AsPlannedAnswer = {
  /** Null: all rounds were played. */
  readonly stoppedAfterRound: number | null
  /** Who left, and after which round; null: before the first. */
  readonly left: readonly { readonly playerId: PlayerId; readonly afterRound: number | null }[]
}

/** What to write down for the answer. */
export function asPlannedDeed(
  turns: readonly PlannedTurn[],
  answer: AsPlannedAnswer,
): Extract<Deed, { kind: 'asPlanned' }> {
  const upTo = (round: number | null) =>
    round === null ? 0 : turns.findLastIndex((turn) => turn.round <= round) + 1
  const count = answer.stoppedAfterRound === null ? turns.length : upTo(answer.stoppedAfterRound)
  return {
    kind: 'asPlanned',
    turns: turns.slice(0, count),
    left: answer.left.map(({ playerId, afterRound }) => ({
      playerId,
      afterTurn: Math.min(count, upTo(afterRound)),
    })),
  }
}
