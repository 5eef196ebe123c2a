import type { Seconds } from '#common/time'
import type { FieldLine, LineWishes } from '#match/format/line-wish'
import type { LinePlaces } from '#match/format/match-format'
import type { Line } from '#match/match'
import type { PlayerId } from '#squad/player'

/**
 * Time in which nobody changes places. Seconds count playing time from the first kick-off, breaks left out: the periods
 * stand end to end.
 */
export type LineUpWindow = {
  /** From 0. */
  readonly period: number
  readonly start: Seconds
  readonly end: Seconds
  /** Fewer than the format has where somebody was sent off or too few are there. */
  readonly places: LinePlaces
}

/** What a player brings from earlier matches: fair share − share, so what it is still due; negative: it had more. */
export type Owed = { readonly playSeconds: number; readonly keepSeconds: number; readonly starts: number }

/**
 * How a player stands as the first window begins; all nothing at the first kick-off. At a later one the line is that at
 * the end of the period before, and the seconds are 0: so a period is running where anybody's are more.
 */
export type RunningSpell = {
  readonly line: Line | null
  /** Time on, or off, without a change up to the first window, inside its period. */
  readonly seconds: Seconds
  /** It came off before: where nobody may return it stays off. */
  readonly hasComeOff: boolean
  /** Periods that it has kept goal in already, the running one not counted. */
  readonly periodsKept: number
}

export type LineUpPlayer = {
  readonly id: PlayerId
  /** May be put in goal. */
  readonly keeps: boolean
  /** By window: there for all of it and fit to play. */
  readonly isThere: readonly boolean[]
  readonly owed: Owed
  /** Promised of the windows of this problem; 0: nothing. */
  readonly leastSeconds: Seconds
  /** Allowed of them; null: no limit. */
  readonly mostSeconds: Seconds | null
  /** notYet is a rule: it is not put there. */
  readonly wishes: LineWishes
  /** Time in each line over the term so far. */
  readonly metSeconds: Readonly<Record<FieldLine, Seconds>>
  readonly running: RunningSpell
}

/** Rules that a coach, or the format, sets; each may be let go. */
export type LineUpRules = {
  /** A keeper stays in goal for the whole period, as long as it is there. */
  readonly keeperForPeriod: boolean
  readonly mostKeeperPeriods: number | null
  /** Whoever comes on, or begins a period, plays at least so long before coming off inside it; 0: no such rule. */
  readonly leastSpellSeconds: Seconds
  /** Longest time on without a change inside a period, goal aside; null: no such rule. */
  readonly longestSpellSeconds: Seconds | null
  /** Longest time off at a stretch inside a period, for who is there; null: no such rule. */
  readonly longestOffSeconds: Seconds | null
  /** Players coming on inside periods that the coach will bear, in all; null: any number. */
  readonly mostChanges: number | null
  /** Players coming on in the match, at breaks too; null: any number. */
  readonly mostSubstitutions: number | null
  readonly mayReturn: boolean
}

/** A place that is held: by the coach, or because it was called already. */
export type FixedPlace = {
  readonly player: number
  readonly window: number
  readonly place: Line | 'on' | 'off'
}

/** A line-up that is asked for. Players, windows and pairs are places in the lists, from 0. */
export type LineUpProblem = {
  /** In order of time; windows of one period follow each other without a hole. */
  readonly windows: readonly LineUpWindow[]
  readonly players: readonly LineUpPlayer[]
  readonly rules: LineUpRules
  /** Never on the pitch at the same time. */
  readonly apart: readonly (readonly [number, number])[]
  /** On the pitch together as much as costs nothing else. */
  readonly together: readonly (readonly [number, number])[]
  readonly fixed: readonly FixedPlace[]
  /** The first window is the start of the match, and beginning it is a start to be shared. */
  readonly hasStart: boolean
}

export const notRunning: RunningSpell = { line: null, seconds: 0, hasComeOff: false, periodsKept: 0 }

export const noRules: LineUpRules = {
  keeperForPeriod: false,
  mostKeeperPeriods: null,
  leastSpellSeconds: 0,
  longestSpellSeconds: null,
  longestOffSeconds: null,
  mostChanges: null,
  mostSubstitutions: null,
  mayReturn: true,
}

export function windowSeconds({ start, end }: Pick<LineUpWindow, 'start' | 'end'>): Seconds {
  return end - start
}
