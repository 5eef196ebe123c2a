import 'server-only'
import type { ClubTx } from '#data/in-club'
import { countPitchEvents } from '#data/pitch-events'
import type { Session } from '#data/sessions'
import { loadTapped } from '#server/pitch-book'

/** Why a session cannot be planned any more, or at all; null when it can. */
function whyNotPlannable(
  session: Pick<Session, 'kind' | 'written'> & { readonly isCancelled?: boolean },
): string | null {
  if (session.kind === 'match') return 'This is a match: only practices are planned here.'
  if (session.isCancelled) return 'This practice was cancelled: there is nothing to plan.'
  if (session.written !== 'notWritten')
    return 'This practice is written in the book already; a plan would change nothing any more.'
  return null
}

/**
 * Why no plan of a session can be saved now; null when one can. What is tapped names the rounds and turns of the plan that
 * the phones have: another one under a practice that has begun would make it say something else.
 */
export async function whyNotPlanned(tx: ClubTx, session: Session): Promise<string | null> {
  const closed = whyNotPlannable(session)
  if (closed !== null || !(await countPitchEvents(tx, [session.id])).has(session.id)) return closed
  const { state } = await loadTapped(tx, session)
  return state.status === 'notBegun'
    ? null
    : 'This practice has begun at the pitch, and what is tapped there goes by the plan as it is. Plan it anew at the pitch.'
}
