import 'server-only'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { accept, InvariantError, type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import type { Author } from '#data/author'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { changeSession, markWritten, type Session } from '#data/sessions'
import { recordEvents } from '#data/turn-events'
import { bookChanges } from '#pitch/book-changes'
import { checkPractice } from '#practice/checks/check-practice'
import type { PracticeEvent } from '#practice/event'
import { eventsThatStand } from '#practice/replay'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { writeTappedMatch } from '#server/confirm-match'
import { forgetTodayOf } from '#server/forget-today'
import { loadTapped, registerToWrite, type TappedPractice } from '#server/pitch-book'
import { writeRegister } from '#server/session-register'
import { bringBookUpToDate, openForWriting } from '#server/session-writing'
import { writeFromPitchDeed } from '#server/tapped-writings'
import type { ConfirmInput } from '#server/whistle-input'
import { whyNotWritable } from '#server/why-not-writable'
import { whyTapsNotWritten } from '#server/why-taps-not-written'
import type { RegisterLine } from '#squad/register'

/**
 * Writes a practice or match into the book as it was tapped: only where the book says otherwise yet, so that writing again
 * writes nothing. What somebody typed meanwhile is not written over unless the coach says so.
 * @throws AppError `notAllowed`, `notFound`, or `conflict` when the book was written in since the page was opened.
 */
export async function confirmPitchOf(
  viewer: Viewer,
  input: ConfirmInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  return inClub(viewer.clubId, async (tx) => {
    const session = await openForWriting(tx, viewer, input)
    return session.kind === 'match'
      ? writeTappedMatch(tx, viewer, { session, input, now })
      : writeTapped(tx, viewer, { session, input, now })
  })
}

type Writing = {
  readonly session: Session
  /** Without `lengthMinutes` what is proposed of the length stands; null there: it was asked and not answered. */
  readonly input: Pick<ConfirmInput, 'cursor' | 'overTyped' | 'takenBack'> &
    Partial<Pick<ConfirmInput, 'lengthMinutes'>>
  readonly now: Date
}

/** The same inside a transaction in which the session is open for writing. */
export async function writeTapped(
  tx: ClubTx,
  viewer: Viewer,
  { session, input, now }: Writing,
): Promise<Result<Done, Problem>> {
  const { today } = await loadClubDay(tx, now)
  const closed = whyNotWritable(session, today)
  if (closed) return refuse({ path: '', message: closed })
  const { lengthMinutes = null } = input
  const asked = await loadTapped(tx, session)
  const isAnswered = asked.book.lengthAsked !== null && lengthMinutes !== null
  const tapped = isAnswered ? await loadTapped(tx, session, { answered: lengthMinutes * 60 }) : asked
  const register = registerToWrite(tapped)
  const own = problemsOfPractice(tapped, { register, input })
  const problems = await whyTapsNotWritten(tx, { kind: 'practice', tapped, register, input, own })
  if (problems.length > 0) return refuse(...problems)
  mustBeAPractice(tapped, register)
  const by = { personId: viewer.personId, at: now }
  const done = await writeBook(tx, { session, tapped, register, by })
  if (!done.isNew && tapped.lastWrite?.upTo === tapped.cursor)
    return saved('Nothing new: all of this stands in the book already.')
  await recordAudit(tx, {
    action: writeFromPitchDeed,
    objectKind: 'session',
    objectId: session.id,
    detail: { upTo: tapped.cursor, ...done.counts },
    by,
  })
  if (done.isNew) await bringBookUpToDate(tx, session, now)
  if (done.counts.written !== 'notWritten' && !isGoingOn(tapped, session.day === today))
    await forgetTodayOf(tx, session.id, now)
  return accept({ message: 'Written. The season book has been brought up to date.' })
}

/** Written down while it is being played: its plan is needed still, and forgets the day after. */
function isGoingOn({ state }: TappedPractice, isToday: boolean): boolean {
  return isToday && state.status === 'running' && (state.live ?? state.next) !== null
}

/** What only a practice can lack. */
function problemsOfPractice(
  { book }: TappedPractice,
  at: { readonly register: readonly RegisterLine[]; readonly input: Writing['input'] },
): readonly Problem[] {
  if (book.lengthAsked && at.input.lengthMinutes === null)
    return [{ path: 'lengthMinutes', message: 'is not known: write how many minutes the practice was' }]
  if (book.turns.length === 0 && at.register.length === 0)
    return [{ path: '', message: 'Nothing was tapped of this practice: there is nothing to write.' }]
  return []
}

/** @throws InvariantError when taps came to a practice that cannot be. */
function mustBeAPractice({ book, before }: TappedPractice, register: readonly RegisterLine[]): void {
  const presence = register.filter(({ state }) => state === 'here')
  const faults = checkPractice({ lengthSeconds: book.lengthSeconds, register: presence, turns: book.turns })
  if (faults.length > 0)
    throw new InvariantError(`taps of ${before.session.id} came to ${JSON.stringify(faults.slice(0, 3))}`)
}

async function writeBook(
  tx: ClubTx,
  at: {
    readonly session: Session
    readonly tapped: TappedPractice
    readonly register: readonly RegisterLine[]
    readonly by: Author
  },
) {
  const { session, tapped, register, by } = at
  const { book, before } = tapped
  const changes = bookChanges(eventsThatStand(before.events), book)
  const events: readonly PracticeEvent[] = [
    ...changes.voids.map((voids) => ({ kind: 'void' as const, id: newId(), voids })),
    ...changes.turns.map((turn) => ({ kind: 'turn' as const, id: newId(), turn })),
    ...changes.passes.map((pass) => ({ kind: 'passed' as const, id: newId(), ...pass })),
  ]
  const isLengthNew = book.lengthSeconds !== null && book.lengthSeconds !== session.lengthSeconds
  if (isLengthNew) await changeSession(tx, session.id, { lengthSeconds: book.lengthSeconds })
  const registered = await writeRegister(
    tx,
    { before: before.register, after: register },
    { sessionId: session.id, by },
  )
  await recordEvents(tx, { practices: [{ sessionId: session.id, events }], by })
  const isWayNew = book.written !== session.written
  if (isWayNew) await markWritten(tx, { sessionIds: [session.id], written: book.written, by })
  return {
    isNew: isLengthNew || isWayNew || registered > 0 || events.length > 0,
    counts: {
      written: book.written,
      turns: book.turns.length,
      events: events.length,
      voided: changes.voids.length,
      registered,
      guests: book.guests.length,
    },
  }
}
