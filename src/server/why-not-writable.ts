import 'server-only'
import type { Day } from '#common/time'
import type { Session } from '#data/sessions'

/** Why nothing can be written of a session: it was cancelled, or it is still to come. Null when it can. */
export function whyNotWritable(
  session: Pick<Session, 'day'> & { readonly isCancelled?: boolean },
  today: Day,
): string | null {
  if (session.isCancelled)
    return 'This session was cancelled: nothing can be written of it. Enter a new one if it was held after all.'
  if (session.day > today) return 'This session is still to come: it can be written down from its day on.'
  return null
}
