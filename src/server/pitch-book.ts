import 'server-only'
import type { Seconds } from '#common/time'
import { listJoined } from '#data/guests'
import type { ClubTx } from '#data/in-club'
import { listPitchEvents } from '#data/pitch-events'
import { findPlan } from '#data/session-plans'
import type { Session } from '#data/sessions'
import { loadPractice, type WrittenPractice } from '#data/written-sessions'
import { namesApart } from '#fairness/book/names-apart'
import { underJoinedIds } from '#pitch/book-changes'
import { bookOfPitch, type PitchBook } from '#pitch/book-of-pitch'
import { marksInBook } from '#pitch/marked-in-book'
import type { PitchEvent } from '#pitch/pitch-event'
import type { KnownPlayer } from '#pitch/pitch-pack'
import { foldPitch, type PitchState } from '#pitch/pitch-state'
import type { PracticePlan } from '#planning/practice-plan'
import { listPitchPlayers } from '#server/pitch-players'
import { loadWritings, type Writings } from '#server/tapped-writings'
import { checkLineOverlap } from '#squad/checks/line-overlap'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'

/** What was tapped of a practice, what it comes to, and what stands in the book. */
export type TappedPractice = {
  readonly plan: PracticePlan | null
  readonly events: readonly PitchEvent[]
  /** Of the last event in the order of arrival. */
  readonly cursor: number
  readonly state: PitchState
  /** Guests who were joined stand under the player they turned out to be. */
  readonly book: PitchBook
  /** Guest → the player it turned out to be. */
  readonly joined: ReadonlyMap<PlayerId, PlayerId>
  readonly players: readonly KnownPlayer[]
  readonly before: WrittenPractice
} & Writings

/** `answered`: how long the coach says that the practice was, in seconds; null: not said. */
export async function loadTapped(
  tx: ClubTx,
  session: Session,
  { answered = null }: { readonly answered?: Seconds | null } = {},
): Promise<TappedPractice> {
  const before = await loadPractice(tx, session.id)
  const plan = (await findPlan(tx, session.id))?.plan ?? null
  const { events, cursor } = await listPitchEvents(tx, { sessionId: session.id })
  const planned = plan?.players.map(({ playerId }) => playerId) ?? []
  const known = { session, planned, register: before.register, events }
  const players = namesApart(await listPitchPlayers(tx, known))
  const guestIds = new Set(events.flatMap(({ deed }) => (deed.kind === 'guest' ? [deed.playerId] : [])))
  const joined = await listJoined(tx, [...guestIds])
  const state = foldPitch(plan, players, events, marksInBook(before.register, new Set(joined.values())))
  const book = underJoinedIds(bookOfPitch(state, { lengthSeconds: session.lengthSeconds, answered }), joined)
  return {
    plan,
    events,
    cursor,
    state,
    book,
    joined,
    players,
    before,
    ...(await loadWritings(tx, session.id)),
  }
}

/**
 * The register to be written. Where nobody took it at the pitch, whoever was written down before and is not in what was
 * played stays as written.
 */
export function registerToWrite({
  state,
  book,
  before,
}: Pick<TappedPractice, 'state' | 'book' | 'before'>): readonly RegisterLine[] {
  if (state.isRegisterTaken) return book.register
  const tapped = new Set([
    ...book.register.map(({ playerId }) => playerId),
    ...state.players.filter(({ state: now }) => now !== 'missing').map(({ playerId }) => playerId),
  ])
  return [...book.register, ...before.register.filter(({ playerId }) => !tapped.has(playerId))]
}

/** Whether what was tapped has a guest and a player there at the same time: then they are not one. */
export function isTappedTwice(
  { book }: Pick<TappedPractice, 'book'>,
  { guestId, playerId }: { readonly guestId: PlayerId; readonly playerId: PlayerId },
): boolean {
  const { register } = underJoinedIds(book, new Map([[guestId, playerId]]))
  return checkLineOverlap(register.filter((line) => line.playerId === playerId)).length > 0
}
