import 'server-only'
import type { Seconds } from '#common/time'
import { type AuditEntry, listDeedsOn } from '#data/audit'
import { listJoined } from '#data/guests'
import type { ClubTx } from '#data/in-club'
import { listPitchEvents } from '#data/pitch-events'
import { findPlan } from '#data/session-plans'
import type { Session } from '#data/sessions'
import { listWritingTimes, type WritingTime } from '#data/writing-times'
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
import { checkLineOverlap } from '#squad/checks/line-overlap'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'

/** Kinds of deed by which a practice is written without anybody typing. */
export const writeFromPitchDeed = 'writeFromPitch'
export const joinGuestDeed = 'joinGuestInSession'

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
  readonly lastWrite: LastWrite | null
  /** Somebody typed or corrected since it was written from the taps, or before that: the last time. */
  readonly typed: WritingTime | null
}

/** When the practice went into the book last, and up to which event. */
export type LastWrite = { readonly at: Date; readonly byName: string | null; readonly upTo: number }

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
  const deeds = await listDeedsOn(tx, {
    objectId: session.id,
    actions: [writeFromPitchDeed, joinGuestDeed],
  })
  const lastWrite = lastWriteOf(deeds)
  return {
    plan,
    events,
    cursor,
    state,
    book,
    joined,
    players,
    before,
    lastWrite,
    typed: typedOf(await listWritingTimes(tx, session.id), { deeds, lastWrite }),
  }
}

function lastWriteOf(deeds: readonly AuditEntry[]): LastWrite | null {
  const last = deeds.find(({ action }) => action === writeFromPitchDeed)
  return last ? { at: last.at, byName: last.personName, upTo: Number(last.detail.upTo) } : null
}

/**
 * The last time somebody typed: after it was written from the taps; and before the first such time only turns count,
 * since a register may well be taken beforehand.
 */
function typedOf(
  times: readonly WritingTime[],
  at: { readonly deeds: readonly AuditEntry[]; readonly lastWrite: LastWrite | null },
): WritingTime | null {
  const own = new Set(at.deeds.map((deed) => deed.at.getTime()))
  const since = at.lastWrite?.at.getTime() ?? null
  const typed = times.filter(
    (time) => !own.has(time.at.getTime()) && (since === null ? time.ofTurns : time.at.getTime() > since),
  )
  return typed.at(-1) ?? null
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
