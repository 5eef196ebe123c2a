import 'server-only'
import { accept, type Result } from '#common/result'
import { recordAudit } from '#data/audit'
import { type ClubTx, inClub } from '#data/in-club'
import { listPitchEvents, meetPitchEvents, recordPitchEvents } from '#data/pitch-events'
import type { Session } from '#data/sessions'
import { pitchLimits, type ReadBatch } from '#exchange/pitch-json'
import { eventForHelper } from '#pitch/for-helper'
import type { PitchEvent } from '#pitch/pitch-event'
import type { PitchAnswer } from '#pitch/pitch-pack'
import { meetFaces, type NewFaces, recordFaces } from '#server/new-faces'
import { clubIdOf, openPitch, type PitchAsker, type PitchRefused } from '#server/pitch-asker'

type Refusal = { readonly id: string; readonly why: string }

/**
 * Takes what a phone sends and tells it what others sent since: one transaction, so a batch is there whole or not at
 * all, however often it is sent again. An event that cannot be taken is refused alone, with a sentence.
 * @throws AppError `notFound` or `notAllowed`.
 */
export async function syncPitch(
  asker: PitchAsker,
  { sessionId, batch, now }: { readonly sessionId: string; readonly batch: ReadBatch; readonly now: Date },
): Promise<Result<PitchAnswer, PitchRefused>> {
  return inClub(clubIdOf(asker), async (tx) => {
    const opened = await openPitch(tx, asker, { sessionId, now })
    if (!opened.ok) return opened
    const taken = await takeEvents(tx, asker, { session: opened.value, events: batch.events, now })
    const unread = batch.refused.map(({ id, why }) => ({ id: id ?? '', why }))
    // A cursor behind the last event is of another book, restored from an older copy: the phone gets everything.
    const after = batch.cursor > taken.lastSeq ? 0 : batch.cursor
    const since = await listPitchEvents(tx, { sessionId, after })
    const others = since.events.filter(({ deviceId }) => deviceId !== batch.deviceId)
    return accept({
      stored: taken.stored,
      refused: [...unread, ...taken.refused],
      events: asker.kind === 'coach' ? others : others.map(eventForHelper),
      cursor: since.cursor,
      serverNow: now.getTime(),
    })
  })
}

type Taken = {
  readonly stored: readonly string[]
  readonly refused: readonly Refusal[]
  readonly lastSeq: number
}

/** Takes what was tapped into a practice that is open to the asker. */
export async function takeEvents(
  tx: ClubTx,
  asker: PitchAsker,
  { session, events, now }: { session: Session; events: readonly PitchEvent[]; now: Date },
): Promise<Taken> {
  const sessionId = session.id
  const met = await meetPitchEvents(tx, { sessionId, events })
  const faces = await meetFaces(tx, { sessionId, events: met.fresh })
  const whyNot = whyNotTaken(asker, { events: met.fresh, lastSeq: met.lastSeq, faces })
  const refused = [
    ...met.clashing.map((id) => ({ id, why: otherContent })),
    ...met.fresh.flatMap(({ id }) => {
      const why = whyNot.get(id)
      return why ? [{ id, why }] : []
    }),
  ]
  const clashing = new Set(met.clashing)
  const fresh = met.fresh.filter(({ id }) => !whyNot.has(id))
  await recordFaces(tx, { faces, events: fresh, since: session.day })
  const by = {
    personId: asker.kind === 'coach' ? asker.viewer.personId : null,
    helperPassId: asker.kind === 'helper' ? asker.passId : null,
    at: now,
  }
  await recordPitchEvents(tx, { sessionId, events: fresh, lastSeq: met.lastSeq, by })
  if (fresh.length > 0) {
    const detail = { events: fresh.length, ...(by.helperPassId && { helperPassId: by.helperPassId }) }
    await recordAudit(tx, { action: 'tapAtPitch', objectKind: 'session', objectId: sessionId, detail, by })
  }
  const stored = [...met.known, ...fresh.map(({ id }) => id)].filter((id) => !clashing.has(id))
  return { stored, refused, lastSeq: met.lastSeq + fresh.length }
}

const otherContent =
  'Something else was sent under the same number before, and that stands. Tap it again: it will get a number of its own.'
const onlyCoach = 'Only a coach of the squad can change the plan. What was planned stands.'
const tooMany = `At most ${pitchLimits.eventsOfPractice} taps are kept of one practice.`

/** Of new events those that cannot be taken, each with a sentence. */
function whyNotTaken(
  asker: PitchAsker,
  {
    events,
    lastSeq,
    faces,
  }: { readonly events: readonly PitchEvent[]; readonly lastSeq: number; readonly faces: NewFaces },
): ReadonlyMap<string, string> {
  const why = new Map<string, string>()
  let left = pitchLimits.eventsOfPractice - lastSeq
  for (const { id, deed } of events) {
    const refusal =
      asker.kind === 'helper' && deed.kind === 'replan'
        ? onlyCoach
        : left <= 0
          ? tooMany
          : (faces.refused.get(id) ?? null)
    if (refusal) why.set(id, refusal)
    else left -= 1
  }
  return why
}
