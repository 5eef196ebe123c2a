import 'server-only'
import type { TermPlan } from '#ahead/term-plan'
import { AppError } from '#common/app-error'
import type { Author } from '#data/author'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { lockSquad } from '#data/squad-lock'
import { couldBeThere, type SquadTerm } from '#data/squad-term'
import { termPlanShape } from '#exchange/term-plan-json'
import type { TermId } from '#squad/squad'

/** The plan of a squad's term as it stands; `version` counts from 1 how often it was saved. */
export type StoredTermPlan = {
  readonly version: number
  readonly plan: TermPlan
  readonly madeById: string | null
  readonly madeAt: Date
}

/** What it names may have gone since; whoever reads it passes that over. */
export async function findTermPlan(tx: ClubTx, at: SquadTerm): Promise<StoredTermPlan | null> {
  if (!couldBeThere(at)) return null
  const row = await tx.db.termPlan.findUnique({
    where: keyOf(tx, at),
    select: { version: true, plan: true, madeById: true, madeAt: true },
  })
  return row && { ...row, plan: termPlanShape.parse(row.plan) }
}

/**
 * Puts a plan in the place of the one that the page knew: `knownVersion` 0 when there was none. Returns its version.
 * @throws AppError `notFound` without the squad or the term; `conflict` when another plan was saved meanwhile.
 */
export async function saveTermPlan(
  tx: ClubTx,
  {
    plan,
    knownVersion,
    by,
    ...at
  }: SquadTerm & { readonly plan: TermPlan; readonly knownVersion: number; readonly by: Author },
): Promise<number> {
  await lockSquad(tx, at.squadId)
  if (!(await isTerm(tx, at.termId))) throw new AppError('notFound', `no term ${at.termId}`)
  const before = await tx.db.termPlan.findUnique({ where: keyOf(tx, at), select: { version: true } })
  if ((before?.version ?? 0) !== knownVersion)
    throw new AppError(
      'conflict',
      `term plan of ${at.squadId} is at ${before?.version ?? 0}, not ${knownVersion}`,
    )
  const row = {
    version: knownVersion + 1,
    // Prisma's type of JSON knows no readonly lists.
    plan: JSON.parse(JSON.stringify(plan)),
    madeById: by.personId,
    madeAt: by.at,
  }
  if (before) await tx.db.termPlan.update({ where: keyOf(tx, at), data: row, select: { version: true } })
  else await tx.db.termPlan.createMany({ data: [{ clubId: tx.clubId, ...at, ...row }] })
  return row.version
}

async function isTerm(tx: ClubTx, termId: TermId): Promise<boolean> {
  return isId(termId) && (await tx.db.term.count({ where: { clubId: tx.clubId, id: termId } })) > 0
}

function keyOf(tx: ClubTx, { squadId, termId }: SquadTerm) {
  return { clubId_squadId_termId: { clubId: tx.clubId, squadId, termId } }
}
