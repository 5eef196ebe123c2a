import type { PitchPack } from '#pitch/pitch-pack'

/** A practice or match that can be opened now, by what tells it from another. */
export type PracticeToday = Pick<PitchPack['session'], 'squadName' | 'day' | 'title' | 'startsAt'> & {
  readonly sessionId: string
  readonly kind: 'practice' | 'match'
}

/** Today's practices and matches of the viewer's squads: the answer to `GET /api/pitch`. */
export type PitchToday = {
  readonly practices: readonly PracticeToday[]
  /** Somebody who helps: the pitch is all of the book that it sees. */
  readonly isHelper: boolean
}
