import type { Day, Seconds } from '#common/time'
import type { SessionName } from '#exchange/attendance/attendance-entry'
import type { RowAnswers } from '#exchange/players/answer'
import type { KnownPlayer, MatchQuestion } from '#exchange/players/match-player'
import type { DaySpan } from '#exchange/table/date-form'
import type { PlayerId } from '#squad/player'
import type { RegisterState } from '#squad/register'

/** A session of the squad's book, as far as an attendance list is compared with it. */
export type KnownSession = {
  readonly id: string
  readonly code: string | null
  readonly day: Day
  readonly kind: 'practice' | 'match'
  readonly title: string
  readonly lengthSeconds: Seconds | null
  readonly isCancelled: boolean
  /** Live register lines; empty: nobody wrote one. */
  readonly register: readonly {
    readonly playerId: PlayerId
    readonly state: RegisterState
    readonly from: Seconds
    readonly to: Seconds
  }[]
}

/** A player of the file: whom the book has, or who is new. `line`: the first row it stands in. */
export type PlannedPlayer = {
  readonly line: number
  readonly name: string
  readonly outcome:
    | { readonly kind: 'known'; readonly playerId: PlayerId }
    | { readonly kind: 'new'; readonly code: string | null; readonly firstDay: Day }
    | { readonly kind: 'guest'; readonly code: string | null }
    | {
        readonly kind: 'question'
        readonly why: MatchQuestion | 'notKnown' | 'oneForTwoNames'
        readonly candidates: readonly KnownPlayer[]
      }
    | { readonly kind: 'problem'; readonly problems: readonly string[] }
    | { readonly kind: 'leftOut' }
}

export type PlannedLine = {
  /** Line of the player in the plan. */
  readonly player: number
  readonly state: RegisterState
  readonly from: Seconds
  readonly to: Seconds
}

export type PlannedSession = {
  /** Names the session in answers. */
  readonly key: string
  readonly name: SessionName
  readonly outcome:
    | { readonly kind: 'new'; readonly lengthSeconds: Seconds | null }
    /** A session of the book that has no register yet. */
    | { readonly kind: 'fill'; readonly sessionId: string }
    /** The book has just this. */
    | { readonly kind: 'same'; readonly sessionId: string }
    | { readonly kind: 'question'; readonly why: SessionQuestion }
    | { readonly kind: 'problem'; readonly problems: readonly string[] }
    | { readonly kind: 'leftOut' }
  readonly register: readonly PlannedLine[]
  /** Players that the file says were away. */
  readonly away: readonly number[]
}

export type SessionQuestion =
  | 'otherRegister'
  | 'severalThatDay'
  | 'cancelled'
  | 'outsideSeasons'
  | 'afterToday'
  | 'nobodyThere'

export type AttendancePlan = {
  readonly players: readonly PlannedPlayer[]
  /** By day. */
  readonly sessions: readonly PlannedSession[]
  readonly doubledRows: readonly { readonly line: number; readonly sameAs: number }[]
  /** Rows that cannot be read and were not left out. */
  readonly openRows: readonly number[]
}

export type RegisterTimes = {
  /** Length of the session. */
  readonly lengthSeconds: Seconds
  /** How late is late where the file only says late. */
  readonly lateSeconds: Seconds
}

export type AttendancePlanning = RegisterTimes & {
  readonly known: readonly KnownPlayer[]
  readonly sessions: readonly KnownSession[]
  readonly seasons: readonly DaySpan[]
  readonly today: Day
  /** By a player's first row, or by a row that cannot be read. */
  readonly answers: RowAnswers
  /** Keys of sessions that a person leaves out. */
  readonly leftOutSessions: ReadonlySet<string>
  /** What becomes of players whom the book does not know. */
  readonly newPlayers: 'ask' | 'add'
}

/** Whether all of it can be written: no open question or problem anywhere, and something to write. */
export function isAttendanceReady(plan: AttendancePlan): boolean {
  const isOpen = ({ outcome }: PlannedPlayer | PlannedSession) =>
    outcome.kind === 'question' || outcome.kind === 'problem'
  if (plan.openRows.length > 0 || plan.players.some(isOpen) || plan.sessions.some(isOpen)) return false
  return plan.sessions.some(({ outcome }) => outcome.kind === 'new' || outcome.kind === 'fill')
}
