import type { Seconds } from '#common/time'
import type { AreaEnding } from '#pitch/pitch-event'
import type { PitchTimes } from '#pitch/pitch-times'
import type { PlanFrom } from '#pitch/plan-as-it-stands'
import type { DecidedTaps } from '#pitch/play-taps'
import type { SetAside } from '#pitch/set-aside'
import type { DoneEvent } from '#pitch/standing-events'
import type { PlannedTurn } from '#planning/practice-plan'
import type { Station } from '#practice/turn'

/** How it is known that a turn was played. */
export type TurnSource = 'tapped' | 'roundByRound' | 'asPlanned'

/** A turn and its time, places as they were tapped or planned. */
export type TimedTurn = {
  /** What opened it, or said of it that it was played. */
  readonly eventId: string
  /** Place in the plan's list, from 0. */
  readonly index: number
  /** Null: the plan does not know the turn. */
  readonly round: number | null
  readonly start: Seconds
  /** Null: it is being played. */
  readonly end: Seconds | null
  readonly source: TurnSource
  readonly stations: readonly Station[]
  readonly changes: readonly { readonly second: Seconds; readonly stations: readonly Station[] }[]
  readonly endings: readonly AreaEnding[]
}

export type TimedTurns = { readonly turns: readonly TimedTurn[]; readonly setAside: readonly SetAside[] }

/** What the times of turns are read from. */
export type TimingSetting = {
  readonly standing: readonly DoneEvent[]
  readonly taps: DecidedTaps
  readonly times: PitchTimes
  readonly planned: readonly PlannedTurn[]
  readonly history: readonly PlanFrom[]
}
