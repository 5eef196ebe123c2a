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
import { writeMatchAsPlanned } from '#server/match-as-planned'
import { loadTapped } from '#server/pitch-book'
import { takeEvents } from '#server/pitch-sync'
import { openForWriting } from '#server/session-writing'
import type { AsPlannedInput } from '#server/whistle-input'
import type { PlayerId } from '#squad/player'
import type { RegisterLine, RegisterState } from '#squad/register'

/**
 * The answer to one question, for a practice or match that was played and not tapped: taken as if a phone had sent it,
 * and written into the book at once.
 * @throws AppError `notAllowed`, `notFound`, or `conflict` when the book was written in since the page was opened.
 */
export async function writeAsPlannedOf(
  viewer: Viewer,
  input: AsPlannedInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  return inClub(viewer.clubId, async (tx) => {
    const session = await openForWriting(tx, viewer, input)
    if (session.kind === 'match') return orNothing(await writeMatchAsPlanned(tx, viewer, { session, now }))
    const { plan, state, before } = await loadTapped(tx, session)
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
    const answered = new Set(input.left.map(({ playerId }) => playerId))
    const untapped = state.players.flatMap(({ playerId, state: how }) =>
      how === 'missing' && !answered.has(playerId) ? [playerId] : [],
    )
    const deed = asPlannedDeed(state.turns, { stoppedAfterRound, left })
    const register = [
      ...notPlaying(before.register, untapped),
      ...missing.map(({ playerId }) => ({ playerId, state: 'gone' as const })),
    ]
    const events = eventsOfAnswer(deed, { register, now })
    await takeEvents(tx, { kind: 'coach', viewer }, { session, events, now })
    const nothingSeen = { cursor: null, overTyped: false, takenBack: [] }
    const result = await writeTapped(tx, viewer, { session, input: nothingSeen, now })
    return orNothing(result)
  }).catch((error: unknown) => {
    if (error instanceof Unwritable) return refuse(...error.reasons)
    throw error
  })
}

/** Taps cannot be taken back: an answer that cannot be written must leave none behind. */
function orNothing<Value>(result: Result<Value, Problem>): Result<Value, Problem> {
  if (!result.ok) throw new Unwritable(result.reasons)
  return result
}

/** Undoes the transaction and carries why. */
class Unwritable extends Error {
  constructor(readonly reasons: readonly Problem[]) {
    super('refused')
  }
}

type Said = { readonly playerId: PlayerId; readonly state: RegisterState | 'gone' }

/** Who of these did not play, by a register that was taken beforehand: the plan makes nobody play who was out for today. */
function notPlaying(
  register: readonly RegisterLine[],
  playerIds: readonly PlayerId[],
): readonly { readonly playerId: PlayerId; readonly state: RegisterState }[] {
  return playerIds.flatMap((playerId) => {
    const lines = register.filter((line) => line.playerId === playerId)
    const last = lines.at(-1)
    return !last || lines.some(({ state }) => state === 'here') ? [] : [{ playerId, state: last.state }]
  })
}

/** The plan ended now, and what is said of single players held before it began. */
function eventsOfAnswer(
  deed: Extract<Deed, { kind: 'asPlanned' }>,
  { register, now }: { readonly register: readonly Said[]; readonly now: Date },
): readonly PitchEvent[] {
  const deviceId = newId()
  const at = now.getTime()
  const before = at - (plannedLength(deed.turns) + 1) * 1000
  return [
    ...register.map(({ playerId, state }) => ({
      id: newId(),
      deviceId,
      at: before,
      deed: { kind: 'register', playerId, state } as const,
    })),
    { id: newId(), deviceId, at, deed },
  ]
}
