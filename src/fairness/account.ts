import type { Day, Seconds } from '#common/time'
import type { Column } from '#exposure/column'
import type { PlayerId } from '#squad/player'
import type { Written } from '#squad/written'

/** What a column holds for a player: seconds (may be fractional in matches) and practice turns, got and due. */
export type Figure = {
  readonly seconds: number
  readonly turns: number
  readonly fairSeconds: number
  /** The same table of dues, each practice turn counted as one. */
  readonly fairTurns: number
  /** What it would have been due, there for every live second of the session; equals `fairSeconds` for who was. 0 for guests. */
  readonly fullFairSeconds: number
  /** What it would have been due if everyone present had taken a turn in goal. */
  readonly openGoalFairSeconds: number
}

/** One row of a session's account: a player's figure in one column. */
export type AccountLine = Column & Figure & { readonly playerId: PlayerId }

/** How a player was at a session, derived from its register lines. */
export type Attendance = 'here' | 'late' | 'left' | 'notPlaying' | 'out' | 'away'

/** A session's account of one player beside its columns. Away members have one too, with zeros. */
export type PresenceAccount = {
  readonly playerId: PlayerId
  /** False: a guest, outside every mean and flag. */
  readonly isMember: boolean
  readonly attendance: Attendance
  /** Live seconds (turns, or match time) it was present for. */
  readonly liveSeconds: Seconds
  readonly turnsPresent: number
  /** Longest run of waiting turns while present; both halves of a free game are one wait. */
  readonly longestRestTurns: number
}

/** A session folded into figures: the sums every page and flag is made of. Rebuilt from what was written, never edited. */
export type SessionAccount = {
  readonly sessionId: string
  readonly day: Day
  readonly kind: 'practice' | 'match'
  readonly written: Written
  /** Live seconds of the whole session, a turn counted once however many stations. */
  readonly liveSeconds: Seconds
  readonly lines: readonly AccountLine[]
  readonly presences: readonly PresenceAccount[]
}
