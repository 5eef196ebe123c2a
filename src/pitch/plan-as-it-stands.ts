import type { EpochMs } from '#pitch/pitch-event'
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
  const replans = eventsOf(standing, 'replan')
  return {
    turns: planHistory(plan, standing).at(-1)?.turns ?? [],
    sentence: replans.at(-1)?.deed.sentence ?? null,
  }
}

/** The turns as they stood from a moment on. */
export type PlanFrom = {
  /** Minus infinity: before any new plan. */
  readonly at: EpochMs
  readonly fromTurn: number
  readonly turns: readonly PlannedTurn[]
}

/** The plan and every new plan made at the pitch, in order. */
export function planHistory(plan: PracticePlan | null, standing: readonly DoneEvent[]): readonly PlanFrom[] {
  const history: PlanFrom[] = [{ at: Number.NEGATIVE_INFINITY, fromTurn: 0, turns: plan?.turns ?? [] }]
  for (const { at, deed } of eventsOf(standing, 'replan')) {
    const before = history.at(-1)?.turns ?? []
    history.push({ at, fromTurn: deed.fromTurn, turns: [...before.slice(0, deed.fromTurn), ...deed.turns] })
  }
  return history
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
