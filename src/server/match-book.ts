import 'server-only'
import { listJoined } from '#data/guests'
import type { ClubTx } from '#data/in-club'
import { listMatchEvents } from '#data/pitch-events'
import type { Session } from '#data/sessions'
import { loadMatch, type WrittenMatch } from '#data/written-sessions'
import { namesApart } from '#fairness/book/names-apart'
import type { KnownPlayer } from '#pitch/pitch-pack'
import { loadMatchFrame } from '#server/match-frame'
import { listPitchPlayers } from '#server/pitch-players'
import { loadWritings, type Writings } from '#server/tapped-writings'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'
import { bookOfMatch, type MatchBook } from '#touchline/book-of-match'
import { foldMatch, type MatchToFold } from '#touchline/fold-match'
import type { MatchEvent } from '#touchline/match-pack'
import type { MatchState } from '#touchline/match-state'

/** What was tapped beside a match, what it comes to, and what stands in the book. */
export type TappedMatch = Writings & {
  readonly toFold: MatchToFold & { readonly players: readonly KnownPlayer[] }
  readonly events: readonly MatchEvent[]
  /** Of the last event in the order of arrival. */
  readonly cursor: number
  readonly state: MatchState
  /** Guests who were joined stand under the player they turned out to be. */
  readonly book: MatchBook
  readonly before: WrittenMatch
}

export async function loadTappedMatch(tx: ClubTx, session: Session): Promise<TappedMatch> {
  const before = await loadMatch(tx, session.id)
  const { events, cursor } = await listMatchEvents(tx, { sessionId: session.id })
  const { plan, format } = await loadMatchFrame(tx, session)
  const planned = plan?.players.map(({ playerId }) => playerId) ?? []
  const players = namesApart(
    await listPitchPlayers(tx, { session, planned, register: before.register, events }),
  )
  const guestIds = new Set(events.flatMap(({ deed }) => (deed.kind === 'guest' ? [deed.playerId] : [])))
  const joined = await listJoined(tx, [...guestIds])
  const joinedTo = new Set(joined.values())
  // The lines of a player whom a guest turned out to be came from the guest's taps.
  const register = before.register.filter(({ playerId }) => !joinedTo.has(playerId))
  const toFold = { plan, format, players, register }
  return {
    toFold,
    events,
    cursor,
    state: foldMatch(toFold, events),
    book: underJoined(bookOfMatch(toFold, events), joined),
    before,
    ...(await loadWritings(tx, session.id)),
  }
}

function underJoined(book: MatchBook, joined: ReadonlyMap<PlayerId, PlayerId>): MatchBook {
  const as = <Row extends { readonly playerId: PlayerId }>(row: Row): Row => ({
    ...row,
    playerId: joined.get(row.playerId) ?? row.playerId,
  })
  return {
    ...book,
    register: book.register.map(as),
    guests: book.guests.map(as),
    spells: book.spells.map(as),
  }
}

/**
 * The register to be written. Where nobody took it at the pitch, whoever was written down before and did not play stays
 * as written.
 */
export function registerOfMatch({
  state,
  book,
  before,
}: Pick<TappedMatch, 'state' | 'book' | 'before'>): readonly RegisterLine[] {
  const isTaken = state.players.some(
    ({ isAssumed, segments }) => !isAssumed && segments.some(({ state: how }) => how === 'here'),
  )
  if (isTaken) return book.register
  const tapped = new Set(book.register.map(({ playerId }) => playerId))
  return [...book.register, ...before.register.filter(({ playerId }) => !tapped.has(playerId))]
}
