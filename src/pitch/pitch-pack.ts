import type { Day, Seconds } from '#common/time'
import type { Deed, EpochMs, PitchEvent } from '#pitch/pitch-event'
import type { PracticePlan } from '#planning/practice-plan'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'
import type { SquadId } from '#squad/squad'
import type { Written } from '#squad/written'

/** A player as the phone knows it: by the name that tells two of one name apart. */
export type KnownPlayer = {
  readonly id: PlayerId
  readonly name: string
  /** May be put in goal on the day of the practice. */
  readonly keeps: boolean
  /** False: came along from elsewhere, outside every mean and flag. */
  readonly isMember: boolean
}

/** Who holds the phone. A helper sees first names and initials, and plays what is planned. */
export type PitchViewer = {
  readonly kind: 'coach' | 'helper'
  readonly name: string
  /** May make a new plan at the pitch. */
  readonly mayReplan: boolean
}

/** Everything a phone needs to run one practice without a signal: the answer to `GET /api/pitch/<sessionId>`. */
export type PitchPack = {
  readonly session: {
    readonly id: string
    readonly squadId: SquadId
    readonly squadName: string
    readonly day: Day
    /** Empty when it has none. */
    readonly title: string
    /** Local time of day as `HH:MM`; null: not known. */
    readonly startsAt: string | null
    readonly lengthSeconds: Seconds | null
    readonly written: Written
  }
  /** Null: nothing was planned, and there is only the register to tap. To a helper without gaps, pairs, limits and locks. */
  readonly plan: PracticePlan | null
  /** Counts the replacements of the plan; 0: there is none. */
  readonly planVersion: number
  readonly themeName: string | null
  /** Members on the day, whoever is planned, and whoever the register has. */
  readonly players: readonly KnownPlayer[]
  readonly policy: {
    /** Most turns in a row that a present player should wait. */
    readonly restLimitTurns: number
  }
  /** What the book's register has of this practice so far; empty before the first time it is written. */
  readonly register: readonly RegisterLine[]
  readonly viewer: PitchViewer
  readonly serverNow: EpochMs
  /** All so far, in the order of their arrival. */
  readonly events: readonly PitchEvent[]
  /** Where the events end; the next request asks from here on. 0: there are none. */
  readonly cursor: number
}

/** The body of `POST /api/pitch/<sessionId>`. */
export type PitchBatch<Done = Deed> = {
  readonly deviceId: string
  /** Up to where the phone has the server's events. */
  readonly cursor: number
  readonly events: readonly PitchEvent<Done>[]
}

/** The answer to a batch. Every event of it is named once, as stored or as refused. */
export type PitchAnswer<Done = Deed> = {
  /** With the server now, or already there from an earlier try. */
  readonly stored: readonly string[]
  readonly refused: readonly { readonly id: string; readonly why: string }[]
  /** Those of other phones since the cursor, in the order of their arrival. */
  readonly events: readonly PitchEvent<Done>[]
  readonly cursor: number
  readonly serverNow: EpochMs
}

/** The answer, with a status of 4xx, when a request is refused as a whole; nothing of it is kept. */
export type PitchRefusal = { readonly why: string }
