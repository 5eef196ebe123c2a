import 'server-only'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { asPlannedDeed } from '#pitch/as-planned-deed'
import type { Deed, PitchEvent } from '#pitch/pitch-event'
import { plannedLength } from '#pitch/plan-as-it-stands'
import type { Done } from '#server/action'
import { writeTapped } from '#server/confirm-pitch'
import { loadTapped } from '#server/pitch-book'
import { takeEvents } from '#server/pitch-sync'
import { openForWriting } from '#server/session-writing'
import type { AsPlannedInput } from '#server/whistle-input'

/**
 * The answer to one question, for a practice that was played and not tapped: taken as if a phone had sent it, and
 * written into the book at once.
 * @throws AppError `notAllowed`, `notFound`, or `conflict` when the book was written in since the page was opened.
 */
export async function writeAsPlannedOf(
  viewer: Viewer,
  input: AsPlannedInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  return inClub(viewer.clubId, async (tx) => {
    const session = await openForWriting(tx, viewer, input)
    const { plan, state } = await loadTapped(tx, session)
    if (!plan || state.turns.length === 0)
      return refuse({ path: '', message: 'Nothing was planned for this practice. Type in what was played.' })
    if (state.played.length > 0)
      return refuse({
        path: '',
        message: 'Turns were tapped at this practice: look at what was tapped, and write that.',
      })
    const { stoppedAfterRound } = input
    const left = input.left.filter(({ afterRound }) => afterRound !== null)
    const missing = input.left.filter(({ afterRound }) => afterRound === null)
    const deed = asPlannedDeed(state.turns, { stoppedAfterRound, left })
    const events = eventsOfAnswer(deed, { missing: missing.map(({ playerId }) => playerId), now })
    await takeEvents(tx, { kind: 'coach', viewer }, { session, events, now })
    const answered = { cursor: null, overTyped: false, takenBack: [] }
    const result = await writeTapped(tx, viewer, { session, input: answered, now })
    // Taps cannot be taken back: an answer that cannot be written must leave none behind.
    if (!result.ok) throw new Unwritable(result.reasons)
    return result
  }).catch((error: unknown) => {
    if (error instanceof Unwritable) return refuse(...error.reasons)
    throw error
  })
}

/** Undoes the transaction and carries why. */
class Unwritable extends Error {
  constructor(readonly reasons: readonly Problem[]) {
    super('refused')
  }
}

/** The plan ended now, and whoever is missing was away before it began. */
function eventsOfAnswer(
  deed: Extract<Deed, { kind: 'asPlanned' }>,
  { missing, now }: { readonly missing: readonly string[]; readonly now: Date },
): readonly PitchEvent[] {
  const deviceId = newId()
  const at = now.getTime()
  const before = at - (plannedLength(deed.turns) + 1) * 1000
  return [
    ...missing.map((playerId) => ({
      id: newId(),
      deviceId,
      at: before,
      deed: { kind: 'register', playerId, state: 'gone' } as const,
    })),
    { id: newId(), deviceId, at, deed },
  ]
}
