import type { Seconds } from '#common/time'
import type { MatchPlan } from '#lineup/match-plan'
import type { LinePlaces, MatchFormat } from '#match/format/match-format'
import type { Goals } from '#match/goals'
import type { Line } from '#match/match'
import type { EpochMs } from '#pitch/pitch-event'
import type { RedoStep, UndoStep } from '#pitch/undo-steps'
import type { PlayerId } from '#squad/player'
import type { CalledPlayers } from '#touchline/change-of-plan'
import type { PlayedPeriod } from '#touchline/match-clock'
import type { MatchDeed, PlacedPlayer } from '#touchline/match-deed'
import type { MatchSetAside } from '#touchline/match-set-aside'
import type { SettledSet } from '#touchline/plans-in-force'
import type { WalkedSpell } from '#touchline/spell-book'
import type { MadeChange } from '#touchline/walk-match'
import type { WalkedPlayer } from '#touchline/walked-register'

export type MatchStatus = 'notBegun' | 'running' | 'atBreak' | 'ended'

export type MatchPlayer = WalkedPlayer & {
  /** Where it is on; null: off. */
  readonly line: Line | null
  /** Playing seconds of the match since which it is on in its line, or off. */
  readonly placedSince: Seconds
  /** Playing time so far. */
  readonly seconds: Seconds
  readonly secondsIn: Readonly<Record<Line, Seconds>>
  /** Playing time of the match for which it was there, and not out or sent off. */
  readonly secondsThere: Seconds
  /** On at the first kick-off. */
  readonly started: boolean
  /** It came off, and did not come on again since. */
  readonly hasComeOff: boolean
  /** May be put in goal. */
  readonly keeps: boolean
}

/** A change that is to be called, with what is to be heard of it. */
export type Call = CalledPlayers & {
  /** What `changeMade` and `changeDropped` name it by. */
  readonly due: Seconds
  readonly period: number
  /** Of its period: what the clock shows when it is due. */
  readonly second: Seconds
  /** Negative once it is due. */
  readonly secondsToGo: Seconds
  /** Due, and no tap says otherwise: it counts as made at its time. */
  readonly isDue: boolean
}

/** Who is to be on at the next kick-off by the plan, and who of them is not there. */
export type NextKickOff = {
  readonly period: number
  readonly isExtra: boolean
  readonly on: readonly PlacedPlayer[]
  readonly missing: readonly PlayerId[]
}

/** What everything that was tapped beside a match adds up to at one moment. */
export type MatchState = {
  readonly at: EpochMs
  readonly plan: MatchPlan | null
  readonly format: MatchFormat
  readonly status: MatchStatus
  readonly beganAt: EpochMs | null
  /** The match is over since. */
  readonly endedAt: EpochMs | null
  readonly periods: readonly PlayedPeriod[]
  /** The one that runs; null: none. */
  readonly period: PlayedPeriod | null
  /** The clock stands inside a period. */
  readonly isClockStopped: boolean
  /** Playing time so far. */
  readonly second: Seconds
  /** The plan's second now: a period's planned beginning and what was played of it, never beyond its planned end. */
  readonly planSecond: Seconds
  /** The squad in its order, then guests. */
  readonly players: readonly MatchPlayer[]
  readonly on: readonly PlacedPlayer[]
  /** Less those whom somebody sent off leaves empty. */
  readonly places: LinePlaces
  /** Places in which nobody is, while a period runs. */
  readonly emptyPlaces: number
  readonly spells: readonly WalkedSpell[]
  /** The one change that stands to be called; null: none in this period. */
  readonly call: Call | null
  /** What follows it in this period. */
  readonly upcoming: readonly Call[]
  /** Null while a period runs, and once the match is over. */
  readonly nextKickOff: NextKickOff | null
  readonly made: readonly MadeChange[]
  /** The plan as it stands after every new plan. */
  readonly sets: readonly SettledSet[]
  /** What the last new plan made at the pitch said of itself. */
  readonly sentence: string | null
  readonly goals: Goals
  readonly undoable: readonly UndoStep<MatchDeed>[]
  readonly redoable: readonly RedoStep<MatchDeed>[]
  /** What was tapped and changes nothing, and why. */
  readonly setAside: readonly MatchSetAside[]
}
