import 'server-only'
import type { ClubTx } from '#data/in-club'
import { listMatchesPlanned } from '#data/match-plans'
import { listPlanned } from '#data/session-plans'
import type { Session } from '#data/sessions'

/** Whether a practice has a plan, or a match its line-up. */
export async function isPlanned(tx: ClubTx, { id, kind }: Pick<Session, 'id' | 'kind'>): Promise<boolean> {
  const planned = kind === 'match' ? await listMatchesPlanned(tx, [id]) : await listPlanned(tx, [id])
  return planned.has(id)
}
