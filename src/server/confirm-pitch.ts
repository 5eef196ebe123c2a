import 'server-only'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { accept, InvariantError, type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import type { Author } from '#data/author'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { listPlayers } from '#data/players'
import { changeSession, markWritten, type Session } from '#data/sessions'
import { recordEvents } from '#data/turn-events'
import { bookChanges } from '#pitch/book-changes'
import { whyTooLong } from '#pitch/too-long'
import { checkPractice } from '#practice/checks/check-practice'
import type { PracticeEvent } from '#practice/event'
import { eventsThatStand } from '#practice/replay'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { writeTappedMatch } from '#server/confirm-match'
import { forgetTodayOf } from '#server/forget-today'
import { loadTapped, registerToWrite, type TappedPractice } from '#server/pitch-book'
import { problemsOfRegister, writeRegister } from '#server/session-register'
import { bringBookUpToDate, openForWriting } from '#server/session-writing'
import { writeFromPitchDeed } from '#server/tapped-writings'
import type { ConfirmInput } from '#server/whistle-input'
import { whyNotWritable } from '#server/why-not-writable'
import { checkLineOverlap } from '#squad/checks/line-overlap'
import type { PlayerId } from '#squad/player'
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
  const problems = await whyNotWritten(tx, { tapped, register, input })
  if (problems.length > 0) return refuse(...problems)
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

type Deciding = {
  readonly tapped: TappedPractice
  readonly register: readonly RegisterLine[]
  readonly input: Writing['input']
}

/** Every reason why what was tapped cannot be written now. */
async function whyNotWritten(tx: ClubTx, { tapped, register, input }: Deciding): Promise<readonly Problem[]> {
  const { book, before, typed } = tapped
  const say = (message: string): readonly Problem[] => [{ path: '', message }]
  if (input.cursor !== null && input.cursor !== tapped.cursor)
    return say('More was tapped since this page was opened. It stands below now: look at it, then write.')
  if (book.lengthAsked && input.lengthMinutes === null)
    return [{ path: 'lengthMinutes', message: 'is not known: write how many minutes the practice was' }]
  if (book.turns.length === 0 && register.length === 0)
    return say('Nothing was tapped of this practice: there is nothing to write.')
  const tooLong = whyTooLong(book)
  if (tooLong) return say(tooLong)
  if (typed && !input.overTyped) {
    const message =
      'Somebody typed this practice in, or corrected it, by hand. Say below whether what was tapped is to stand in its place.'
    return [{ path: 'overTyped', message }]
  }
  const names = await namesOf(tx, tapped, register)
  const nameOf = (playerId: PlayerId) => names.get(playerId) ?? 'Somebody'
  const doubled = checkLineOverlap(register).flatMap((fault) =>
    fault.rule === 'linesOverlap' ? [register[fault.line]?.playerId ?? ''] : [],
  )
  // What was tapped always comes to a practice that can be; only a guest joined to somebody who was there too cannot.
  if (doubled.length > 0)
    return [...new Set(doubled)].flatMap((playerId) => say(thereTwice(nameOf(playerId))))
  const ofRegister = problemsOfRegister(
    { before: before.register, after: register },
    { takenBack: input.takenBack, nameOf },
  )
  if (ofRegister.length > 0) return ofRegister.map(({ message }) => ({ path: 'takenBack', message }))
  const presence = register.filter(({ state }) => state === 'here')
  const faults = checkPractice({ lengthSeconds: book.lengthSeconds, register: presence, turns: book.turns })
  if (faults.length > 0)
    throw new InvariantError(
      `taps of ${tapped.before.session.id} came to ${JSON.stringify(faults.slice(0, 3))}`,
    )
  return []
}

function thereTwice(name: string): string {
  return `${name} was tapped as here at the same time as the guest who was joined to ${name}. Take one of the two back at the pitch page, or type the practice in by hand.`
}

async function namesOf(
  tx: ClubTx,
  { before }: TappedPractice,
  register: readonly RegisterLine[],
): Promise<ReadonlyMap<PlayerId, string>> {
  const ids = new Set([...before.register, ...register].map(({ playerId }) => playerId))
  return new Map((await listPlayers(tx, [...ids])).map(({ id, name }) => [id, name]))
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
