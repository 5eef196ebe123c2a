import { type DoneEvent, eventsOf } from '#pitch/standing-events'
import type { PlannedTurn, PracticePlan } from '#planning/practice-plan'

/** The turns to be played after every new plan, and what the last new plan said of itself. */
export type PlanNow = {
  readonly turns: readonly PlannedTurn[]
  /** Null: no new plan was made at the pitch. */
  readonly sentence: string | null
}

/** Of two new plans the later holds from its first turn on; what the earlier said of turns before that stays. */
export function planAsItStands(plan: PracticePlan | null, standing: readonly DoneEvent[]): PlanNow {
  return eventsOf(standing, 'replan').reduce<PlanNow>(
    (now, { deed }) => ({
      turns: [...now.turns.slice(0, deed.fromTurn), ...deed.turns],
      sentence: deed.sentence,
    }),
    { turns: plan?.turns ?? [], sentence: null },
  )
}

/** Place in the list of a round's first turn; null: the list has no such round. */
export function firstOfRound(turns: readonly PlannedTurn[], round: number): number | null {
  const first = turns.findIndex((turn) => turn.round === round)
  return first < 0 ? null : first
}

/** What some turns take in all when played as planned: the gaps between them, but not the one after the last. */
export function plannedLength(turns: readonly PlannedTurn[]): number {
  return turns.reduce(
    (sum, turn, index) => sum + turn.seconds + (index < turns.length - 1 ? turn.gapSeconds : 0),
    0,
  )
}
