import 'server-only'
import type { Viewer } from '#access/viewer'
import { andList } from '#common/and-list'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { Session } from '#data/sessions'
import type { MatchPlan } from '#lineup/match-plan'
import type { Done } from '#server/action'
import { writeTappedMatch } from '#server/confirm-match'
import { loadTappedMatch } from '#server/match-book'
import { takeEvents } from '#server/pitch-sync'
import { asPlannedTaps } from '#touchline/as-planned-taps'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchEvent } from '#touchline/match-pack'
import type { MatchState } from '#touchline/match-state'

/** The answer to one question for a match of which nothing was tapped but who was there: inside one transaction. */
export async function writeMatchAsPlanned(
  tx: ClubTx,
  viewer: Viewer,
  { session, now }: { readonly session: Session; readonly now: Date },
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
  const absent = absentFrom(plan, state)
  if (absent.length > 0)
    return refuse({
      path: '',
      message: `${andList(absent)} did not come, or did not play, by the register: then it was not as planned. Type in what was played.`,
    })
  const { periodSeconds, breakSeconds } = plan.format
  const length = periodSeconds.reduce((sum, seconds) => sum + seconds + breakSeconds, 0)
  const beganAt = now.getTime() - length * 1000
  const deviceId = newId()
  const eventOf = (at: number, deed: MatchDeed): MatchEvent => ({ id: newId(), deviceId, at, deed })
  const taps = asPlannedTaps(toFold, events, beganAt)
  if (!taps) return refuse({ path: '', message: 'The plan has nobody on. Type in what was played.' })
  const answer = taps.map(({ at, deed }) => eventOf(at, deed))
  await takeEvents(tx, { kind: 'coach', viewer }, { session, events: answer, now })
  return writeTappedMatch(tx, viewer, {
    session,
    input: { cursor: null, overTyped: false, takenBack: [] },
    now,
  })
}

/** Names of those the plan counts on and the register, as it was tapped or written, does not have as able to play. */
function absentFrom({ players }: MatchPlan, state: MatchState): readonly string[] {
  const planned = new Set(players.map(({ playerId }) => playerId))
  return state.players
    .filter(({ id, state: how, expectedFrom }) => planned.has(id) && how !== 'here' && expectedFrom === null)
    .map(({ name }) => name)
}
