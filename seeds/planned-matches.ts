import type { ClubTx } from '#data/in-club'
import { findFormatOfSquad } from '#data/match-formats'
import { savePlan } from '#data/session-plans'
import { getSession } from '#data/sessions'
import { draftOf, planOfDraft } from '#lineup/draft/line-up-draft'
import { newMatchRequest } from '#lineup/draft/new-match-request'
import type { PickablePlayer } from '#lineup/draft/pickable-player'
import { plainFormat } from '#lineup/draft/plain-format'
import { loadMatchCast } from '#server/match-cast'
import { defaultPolicy } from '#squad/policy'
import type { DemoClub } from './demo-club'
import { formats } from './formats'
import { demoId } from './ids'

/** The coming match that has its line-up already. */
const planned = 'underTen/match/2026-06-13'

/** Plans the next match of the younger squad. */
export async function planDemoMatch(
  tx: ClubTx,
  demo: DemoClub,
  { now }: { readonly now: Date },
): Promise<void> {
  await planMatch(tx, demo, { sessionId: demoId(planned), called: formats.underTen.called, now })
}

/** Plans a match as its coach would: so many are asked to come, whom the season owes most first. */
export async function planMatch(
  tx: ClubTx,
  demo: Pick<DemoClub, 'club'>,
  { sessionId, called, now }: { readonly sessionId: string; readonly called: number; readonly now: Date },
): Promise<void> {
  const session = await getSession(tx, sessionId)
  const cast = await loadMatchCast(tx, { session, today: demo.club.calendarDay, alsoIds: [] })
  const request = newMatchRequest({
    format: (await findFormatOfSquad(tx, session.squadId))?.format ?? plainFormat,
    players: asked(
      cast.filter(({ isMember }) => isMember),
      called,
    ),
    register: [],
    policyShare: defaultPolicy.leastMatchShare,
    apart: [],
    together: [],
  })
  const plan = planOfDraft(draftOf(request), (id) => cast.find((player) => player.id === id)?.name ?? '')
  if (!plan) throw new Error('No line-up for the demo.')
  await savePlan(tx, {
    sessionId: session.id,
    plan,
    knownVersion: 0,
    by: { personId: session.ledById, at: now },
  })
}

/** Two who may keep goal among them, so that nobody stands there all day. */
function asked(members: readonly PickablePlayer[], called: number): readonly PickablePlayer[] {
  const byDue = members.toSorted((one, other) => other.owed.playSeconds - one.owed.playSeconds)
  const keepers = byDue.filter(({ keeps }) => keeps).slice(0, 2)
  const others = byDue.filter((player) => !keepers.includes(player))
  return [...keepers, ...others].slice(0, called)
}
