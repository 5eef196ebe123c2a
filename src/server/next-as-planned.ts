import 'server-only'
import { hasDay } from '#common/dated'
import type { ClubTx } from '#data/in-club'
import type { Session } from '#data/sessions'
import { findTermPlan } from '#data/term-plans'
import type { Season } from '#squad/squad'

/** What a practice to come is to be: what stands on it; where nothing does, what the saved plan of the term says. */
export async function asPlannedAhead(
  tx: ClubTx,
  { session, season }: { readonly session: Session; readonly season: Season },
): Promise<Pick<Session, 'themeId' | 'designId'>> {
  const { id, squadId, kind, day, themeId, designId } = session
  const term = season.terms.find((own) => hasDay(own, day))
  if (kind !== 'practice' || themeId !== null || designId !== null || !term) return { themeId, designId }
  const stored = await findTermPlan(tx, { squadId, termId: term.id })
  return stored?.plan.practices.find(({ sessionId }) => sessionId === id) ?? { themeId, designId }
}
