import 'server-only'
import type { ClubTx } from '#data/in-club'
import { listMatchEvents } from '#data/pitch-events'
import type { Session } from '#data/sessions'
import { hasKickedOff } from '#touchline/has-kicked-off'

/** Why a session can have no line-up any more, or at all; null when it can. */
function whyNotPlannable({ kind, written, isCancelled }: Session): string | null {
  if (kind === 'practice') return 'This is a practice: line-ups are for matches.'
  if (isCancelled) return 'This match was cancelled: there is nothing to plan.'
  if (written !== 'notWritten')
    return 'This match is written in the book already; a line-up would change nothing any more.'
  return null
}

/**
 * Why no line-up of a session can be saved now; null when one can. What is tapped beside a match goes by the plan that the
 * phones have: another one under a match that has begun would make it say something else.
 */
export async function whyNoLineUp(tx: ClubTx, session: Session): Promise<string | null> {
  const closed = whyNotPlannable(session)
  if (closed !== null) return closed
  const { events } = await listMatchEvents(tx, { sessionId: session.id })
  return hasKickedOff(events)
    ? 'This match has begun, and what is tapped beside it goes by the line-up as it is. Change it on the phone beside the pitch.'
    : null
}
