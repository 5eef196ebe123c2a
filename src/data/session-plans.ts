import 'server-only'
import { AppError } from '#common/app-error'
import type { Day } from '#common/time'
import type { Author } from '#data/author'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { isOver, lockSession } from '#data/sessions'
import { practicePlanShape } from '#exchange/practice-plan-json'
import type { PracticePlan } from '#planning/practice-plan'

/** The plan of a practice as it stands; `version` counts from 1 how often it was saved. */
export type StoredPlan = {
  readonly sessionId: string
  readonly version: number
  readonly plan: PracticePlan
  readonly madeById: string | null
  readonly madeAt: Date
}

export async function findPlan(tx: ClubTx, sessionId: string): Promise<StoredPlan | null> {
  if (!isId(sessionId)) return null
  const row = await tx.db.sessionPlan.findUnique({
    where: { clubId_sessionId: { clubId: tx.clubId, sessionId } },
    select: { sessionId: true, version: true, plan: true, madeById: true, madeAt: true },
  })
  return row && { ...row, plan: practicePlanShape.parse(row.plan) }
}

/** @throws AppError `notFound`. */
export async function getPlan(tx: ClubTx, sessionId: string): Promise<StoredPlan> {
  const plan = await findPlan(tx, sessionId)
  if (!plan) throw new AppError('notFound', `no plan of session ${sessionId}`)
  return plan
}

/** Which of these sessions have a plan. */
export async function listPlanned(tx: ClubTx, sessionIds: readonly string[]): Promise<ReadonlySet<string>> {
  const rows = await tx.db.sessionPlan.findMany({
    where: { clubId: tx.clubId, sessionId: { in: sessionIds.filter(isId) } },
    select: { sessionId: true },
  })
  return new Set(rows.map(({ sessionId }) => sessionId))
}

/**
 * Puts a plan in the place of the one that the page knew: `knownVersion` 0 when there was none. Returns its version.
 * @throws AppError `notFound` without the session; `conflict` when another plan was saved meanwhile.
 */
export async function savePlan(
  tx: ClubTx,
  {
    sessionId,
    plan,
    knownVersion,
    by,
  }: {
    readonly sessionId: string
    readonly plan: PracticePlan
    readonly knownVersion: number
    readonly by: Author
  },
): Promise<number> {
  await lockSession(tx, sessionId)
  const before = await tx.db.sessionPlan.findUnique({
    where: { clubId_sessionId: { clubId: tx.clubId, sessionId } },
    select: { version: true },
  })
  if ((before?.version ?? 0) !== knownVersion)
    throw new AppError('conflict', `plan of ${sessionId} is at ${before?.version ?? 0}, not ${knownVersion}`)
  const row = {
    version: knownVersion + 1,
    // Prisma's type of JSON knows no readonly lists.
    plan: JSON.parse(JSON.stringify(plan)),
    madeById: by.personId,
    madeAt: by.at,
    forgottenAt: null,
  }
  if (before)
    await tx.db.sessionPlan.update({
      where: { clubId_sessionId: { clubId: tx.clubId, sessionId } },
      data: row,
      select: { version: true },
    })
  else await tx.db.sessionPlan.createMany({ data: [{ clubId: tx.clubId, sessionId, ...row }] })
  return row.version
}

/** Puts in a plan's place what is left of it, and notes when. Another plan that was saved meanwhile stays. */
export async function forgetInPlan(
  tx: ClubTx,
  {
    sessionId,
    version,
    plan,
    at,
  }: Pick<StoredPlan, 'sessionId' | 'version' | 'plan'> & { readonly at: Date },
): Promise<void> {
  await tx.db.sessionPlan.updateMany({
    where: { clubId: tx.clubId, sessionId, version },
    data: { plan: JSON.parse(JSON.stringify(plan)), forgottenAt: at },
  })
}

/** Sessions before a day that are written into the book, or of `lastDay` or before, whose plan has forgotten nothing yet. */
export async function listPlansToForget(
  tx: ClubTx,
  { before, lastDay }: { readonly before: Day; readonly lastDay: Day },
): Promise<readonly string[]> {
  const rows = await tx.db.sessionPlan.findMany({
    where: { clubId: tx.clubId, forgottenAt: null, session: isOver({ before, lastDay }) },
    select: { sessionId: true },
    orderBy: { sessionId: 'asc' },
  })
  return rows.map(({ sessionId }) => sessionId)
}
