import 'server-only'
import { accept, type Result } from '#common/result'
import { recordAudit } from '#data/audit'
import { type ClubTx, inClub } from '#data/in-club'
import { listMatchEvents, listPitchEvents, meetPitchEvents, recordPitchEvents } from '#data/pitch-events'
import { lockSession, type Session } from '#data/sessions'
import { matchEventShape } from '#exchange/match-deed-json'
import { readEvents, type SentBatch } from '#exchange/pitch-batch'
import { pitchEventShape } from '#exchange/pitch-json'
import type { PitchAnswer } from '#pitch/pitch-pack'
import { meetFaces, recordFaces } from '#server/new-faces'
import { clubIdOf, handOf, openPitch, type PitchAsker, type PitchRefused } from '#server/pitch-asker'
import { whyNotForHelper } from '#server/pitch-helper-limits'
import { whyNoRoom } from '#server/pitch-room'
import type { TappedDeed, TappedEvent } from '#touchline/tapped-event'
import { tappedForHelper } from '#touchline/tapped-for-helper'

type Refusal = { readonly id: string; readonly why: string }

/**
 * Takes what a phone sends and tells it what others sent since: one transaction, so a batch is there whole or not at
 * all, however often it is sent again. An event that cannot be taken is refused alone, with a sentence.
 * @throws AppError `notFound` or `notAllowed`.
 */
export async function syncPitch(
  asker: PitchAsker,
  { sessionId, batch, now }: { readonly sessionId: string; readonly batch: SentBatch; readonly now: Date },
): Promise<Result<PitchAnswer<TappedDeed>, PitchRefused>> {
  return inClub(clubIdOf(asker), async (tx) => {
    const asked = await openPitch(tx, asker, { sessionId, now })
    if (!asked.ok) return asked
    // While others are waited for the practice may be cancelled, or the pass taken back.
    await lockSession(tx, sessionId)
    const opened = await openPitch(tx, asker, { sessionId, now })
    if (!opened.ok) return opened
    const session = opened.value
    const read = readAs(session, batch.events)
    const taken = await takeEvents(tx, asker, { session, events: read.events, now })
    // A cursor behind the last event is of another book, restored from an older copy: the phone gets everything.
    const after = batch.cursor > taken.lastSeq ? 0 : batch.cursor
    const notFrom = { deviceId: batch.deviceId, ...handOf(asker) }
    const { events: others, cursor } = await listOf(session)(tx, { sessionId, after, notFrom })
    return accept({
      stored: taken.stored,
      refused: [...read.refused, ...taken.refused],
      events: asker.kind === 'coach' ? others : others.map(tappedForHelper),
      cursor,
      serverNow: now.getTime(),
    })
  })
}

function readAs({ kind }: Session, sent: readonly unknown[]) {
  return kind === 'match' ? readEvents(matchEventShape, sent) : readEvents(pitchEventShape, sent)
}

function listOf({ kind }: Session) {
  return kind === 'match' ? listMatchEvents : listPitchEvents
}

type Taken = {
  readonly stored: readonly string[]
  readonly refused: readonly Refusal[]
  readonly lastSeq: number
}

/** Takes what was tapped into a practice or match that is open to the asker. */
export async function takeEvents(
  tx: ClubTx,
  asker: PitchAsker,
  { session, events, now }: { session: Session; events: readonly TappedEvent[]; now: Date },
): Promise<Taken> {
  const sessionId = session.id
  const met = await meetPitchEvents(tx, { sessionId, events })
  const faces = await meetFaces(tx, { sessionId, events: met.fresh })
  const notAllowed =
    asker.kind === 'helper'
      ? await whyNotForHelper(tx, {
          sessionId,
          hand: handOf(asker),
          events: met.fresh,
          listBefore: async () => (await listOf(session)(tx, { sessionId })).events,
        })
      : []
  const whyNot = new Map([...faces.refused, ...notAllowed])
  const left = met.fresh.filter(({ id }) => !whyNot.has(id))
  for (const [id, why] of await whyNoRoom(tx, asker, { session, events: left })) whyNot.set(id, why)
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
  const by = { ...handOf(asker), at: now }
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
