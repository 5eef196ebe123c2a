import 'server-only'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { Session } from '#data/sessions'
import type { Done } from '#server/action'
import { writeTappedMatch } from '#server/confirm-match'
import { loadTappedMatch } from '#server/match-book'
import { takeEvents } from '#server/pitch-sync'
import type { AsPlannedInput } from '#server/whistle-input'
import { asPlannedTaps } from '#touchline/as-planned-taps'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchEvent } from '#touchline/match-pack'

type Answer = {
  readonly session: Session
  readonly input: Pick<AsPlannedInput, 'left'>
  readonly now: Date
}

/** The answer to one question for a match of which nothing was tapped but who was there: inside one transaction. */
export async function writeMatchAsPlanned(
  tx: ClubTx,
  viewer: Viewer,
  { session, input, now }: Answer,
): Promise<Result<Done, Problem>> {
  const { toFold, events, state } = await loadTappedMatch(tx, session)
  const { plan } = toFold
  if (!plan)
    return refuse({ path: '', message: 'Nothing was planned for this match. Type in what was played.' })
  if (state.beganAt !== null)
    return refuse({
      path: '',
      message: 'A kick-off was tapped in this match: look at what was tapped, and write that.',
    })
  const { periodSeconds, breakSeconds } = plan.format
  const length = periodSeconds.reduce((sum, seconds) => sum + seconds + breakSeconds, 0)
  const beganAt = now.getTime() - length * 1000
  const deviceId = newId()
  const eventOf = (at: number, deed: MatchDeed): MatchEvent => ({ id: newId(), deviceId, at, deed })
  const missing = input.left.map(({ playerId }) =>
    eventOf(beganAt - 1000, { kind: 'register', playerId, state: 'gone' }),
  )
  const taps = asPlannedTaps(toFold, [...events, ...missing], beganAt)
  if (!taps)
    return refuse({
      path: 'left',
      message: 'Nobody of the plan would be left to begin. Type in what was played.',
    })
  const answer = [...missing, ...taps.map(({ at, deed }) => eventOf(at, deed))]
  await takeEvents(tx, { kind: 'coach', viewer }, { session, events: answer, now })
  return writeTappedMatch(tx, viewer, {
    session,
    input: { cursor: null, overTyped: false, takenBack: [] },
    now,
  })
}
