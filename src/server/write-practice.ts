import 'server-only'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { recordGuests } from '#data/guests'
import { newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { changeSession, markWritten, type Session } from '#data/sessions'
import { recordEvents } from '#data/turn-events'
import { loadPractice, type WrittenPractice } from '#data/written-sessions'
import { entrySentence } from '#practice/entry-sentence'
import type { PracticeEvent } from '#practice/event'
import { changesOfGrid, type GridChanges } from '#practice/grid-changes'
import { gridOfTurns, type WrittenTurn } from '#practice/grid-of-turns'
import { type DecidedPractice, decidePractice, type PracticeEntry } from '#practice/practice-entry'
import { eventsThatStand } from '#practice/replay'
import { forgetTodayOf } from '#server/forget-today'
import { type Cast, castOf, underBookIds } from '#server/session-cast'
import type { PracticeInput } from '#server/session-input'
import { problemsOfRegister, writeRegister } from '#server/session-register'
import type { Written } from '#squad/written'

type Decision = {
  readonly decided: DecidedPractice
  readonly changes: GridChanges
  readonly cast: Cast
  readonly before: WrittenPractice
}

/** Everything a typed-in practice would write, or every reason why not; nothing is written yet. */
export async function decideWriting(
  tx: ClubTx,
  session: Session,
  input: PracticeInput,
): Promise<Result<Decision, Problem>> {
  if (session.kind !== 'practice') throw new AppError('notFound', `session ${session.id} is no practice`)
  const { grid } = input
  const playerIds = [...grid.rows, ...input.register].map(({ playerId }) => playerId)
  const cast = await castOf(tx, session.squadId, { guests: input.guests, playerIds })
  if (!cast.ok) return cast
  const entry: PracticeEntry = {
    grid: { columns: grid.columns, rows: underBookIds(grid.rows, cast.value) },
    register: underBookIds(input.register, cast.value),
    lengthSeconds: input.lengthSeconds,
  }
  const decided = decidePractice(entry)
  if (!decided.ok) {
    const columnTitle = (at: number) => grid.columns[at]?.title || `Turn ${at + 1}`
    const parts = { columnTitle, nameOf: cast.value.nameOf }
    return refuse(...decided.reasons.map((reason) => ({ path: '', message: entrySentence(reason, parts) })))
  }
  const before = await loadPractice(tx, session.id)
  const register = { before: before.register, after: decided.value.register }
  const problems = problemsOfRegister(register, { takenBack: input.takenBack, nameOf: cast.value.nameOf })
  if (problems.length > 0) return refuse(...problems)
  const was = gridOfTurns(
    turnsThatStand(before.events),
    entry.grid.rows.map(({ playerId }) => playerId),
  )
  return accept({ decided: decided.value, changes: changesOfGrid(was, entry.grid), cast: cast.value, before })
}

/** Writes what was decided, with its audit row. What was written before is voided where it changed, and stays in the book. */
export async function saveWriting(
  tx: ClubTx,
  viewer: Viewer,
  {
    session,
    input,
    now,
    decision,
  }: { session: Session; input: PracticeInput; now: Date; decision: Decision },
): Promise<void> {
  const by = { personId: viewer.personId, at: now }
  const { decided, before } = decision
  await recordGuests(tx, { guests: decision.cast.guests, since: session.day })
  if (input.lengthSeconds !== session.lengthSeconds) {
    await changeSession(tx, session.id, { lengthSeconds: input.lengthSeconds })
  }
  const at = { sessionId: session.id, by }
  const registered = await writeRegister(tx, { before: before.register, after: decided.register }, at)
  const events = eventsToWrite(decision, input)
  await recordEvents(tx, { practices: [{ sessionId: session.id, events }], by })
  const written = wayOf(session, { way: input.way, turnCount: decided.turns.length })
  if (written !== session.written) await markWritten(tx, { sessionIds: [session.id], written, by })
  if (written !== 'notWritten') await forgetTodayOf(tx, session.id, now)
  const voided = events.filter((event) => event.kind === 'void').length
  const detail = {
    written,
    turns: decided.turns.length,
    events: events.length,
    voided,
    registered,
    guests: decision.cast.guests.length,
  }
  await recordAudit(tx, { action: 'writePractice', objectKind: 'session', objectId: session.id, detail, by })
}

/** The turns of a practice that stand, in order of time. */
export function turnsThatStand(events: readonly PracticeEvent[]): readonly WrittenTurn[] {
  return eventsThatStand(events)
    .flatMap((event) => (event.kind === 'turn' ? [{ eventId: event.id, turn: event.turn }] : []))
    .toSorted((one, other) => one.turn.start - other.turn.start)
}

function eventsToWrite(
  { decided, changes, before }: Decision,
  input: PracticeInput,
): readonly PracticeEvent[] {
  const standing = new Set(eventsThatStand(before.events).map(({ id }) => id))
  const voids = [...changes.voids, ...input.voidPasses.filter((id) => standing.has(id))]
  const outcomes = changes.columns.map((column) => decided.outcomes[column])
  return [
    ...voids.map((id) => ({ kind: 'void' as const, id: newId(), voids: id })),
    ...outcomes
      .flatMap((own) => own?.turns ?? [])
      .map((turn) => ({ kind: 'turn' as const, id: newId(), turn })),
    ...outcomes
      .flatMap((own) => own?.passes ?? [])
      .map((pass) => ({ kind: 'passed' as const, id: newId(), ...pass })),
  ]
}

/** A correction keeps the way a practice was written; without any turn only its register is, and it stays not written. */
function wayOf(session: Session, { way, turnCount }: { way: Written; turnCount: number }): Written {
  if (turnCount === 0) return 'notWritten'
  return session.written === 'notWritten' ? way : session.written
}
