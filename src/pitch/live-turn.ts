import { type Placed, placedIn } from '#pitch/changeover'
import { type PlayedTurn, playedTurns, seatedIn } from '#pitch/played-turns'
import type { TimedTurn, TimedTurns } from '#pitch/timed-turn'
import type { Station } from '#practice/turn'
import type { PresenceLine } from '#squad/presence'

/** A turn that is being played, ball by ball. */
export type LiveTurn = Omit<PlayedTurn, 'end' | 'parts'> & {
  /** Who has which place now; who left is out of it already. */
  readonly stations: readonly Station[]
  /** Places that somebody had who is not there now, and nobody has taken over. */
  readonly vacant: readonly Placed[]
  /** What `runningTotals` cuts at a second. */
  readonly timed: TimedTurn
}

/** The turn that nobody has ended, as it stands now; null: none is being played. */
export function liveTurn(timed: TimedTurns, presence: readonly PresenceLine[]): LiveTurn | null {
  const open = timed.turns.find(({ end }) => end === null)
  if (!open) return null
  const [turn] = playedTurns([{ ...open, end: Number.POSITIVE_INFINITY }], presence).turns
  const { eventId, index, round, start, source, endings, stations } = open
  const now = turn?.parts.at(-1)?.stations ?? stations.map(() => ({ attack: [], defend: [], keep: [] }))
  const there = new Set(seatedIn(now))
  const said = open.changes.at(-1)?.stations ?? stations
  return {
    eventId,
    index,
    round,
    start,
    source,
    endings,
    stations: now,
    vacant: placedIn(said).filter(({ playerId }) => !there.has(playerId)),
    timed: open,
  }
}
