import 'server-only'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import type { ClubTx } from '#data/in-club'
import { listSeasons } from '#data/seasons'
import { lockSquad } from '#data/squad-lock'
import { loadClubDay } from '#server/club-day'
import type { SquadId, Term, TermId } from '#squad/squad'

/**
 * A term whose programme can still be changed: one that is over has been reviewed by its own. Whoever else changes things
 * of the squad waits until the transaction ends.
 * @throws AppError `notFound` without the squad or the term.
 */
export async function openTerm(
  tx: ClubTx,
  { squadId, termId, now }: { readonly squadId: SquadId; readonly termId: TermId; readonly now: Date },
): Promise<Result<Term, Problem>> {
  await lockSquad(tx, squadId)
  const { today } = await loadClubDay(tx, now)
  const term = (await listSeasons(tx)).flatMap(({ terms }) => terms).find(({ id }) => id === termId)
  if (!term) throw new AppError('notFound', `no term ${termId}`)
  if (term.lastDay < today)
    return refuse({
      path: '',
      message: `${term.name} is over since ${term.lastDay}; its programme stays. Choose a term that runs or is to come.`,
    })
  return accept(term)
}
