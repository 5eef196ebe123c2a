import 'server-only'
import type { z } from 'zod'
import { AppError } from '#common/app-error'
import type { Day } from '#common/time'
import type { Author } from '#data/author'
import { dateOf } from '#data/days'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { lockSession, type Session } from '#data/sessions'
import { matchPlanShape } from '#exchange/match-plan-json'
import { practicePlanShape } from '#exchange/practice-plan-json'
import type { MatchPlan } from '#lineup/match-plan'
import type { PracticePlan } from '#planning/practice-plan'

/** The plan of a practice, or the line-up of a match, as it stands; `version` counts from 1 how often it was saved. */
export type StoredPlan<Plan> = {
  readonly sessionId: string
  readonly version: number
  readonly plan: Plan
  readonly madeById: string | null
  readonly madeAt: Date
}

type AnyPlan = PracticePlan | MatchPlan

/** Null for a match too. */
export function findPlan(tx: ClubTx, sessionId: string): Promise<StoredPlan<PracticePlan> | null> {
  return findOfKind(tx, sessionId, { kind: 'practice', shape: practicePlanShape })
}

/** Null for a practice too. */
export function findMatchPlan(tx: ClubTx, sessionId: string): Promise<StoredPlan<MatchPlan> | null> {
  return findOfKind(tx, sessionId, { kind: 'match', shape: matchPlanShape })
}

/** @throws AppError `notFound`. */
export async function getPlan(tx: ClubTx, sessionId: string): Promise<StoredPlan<PracticePlan>> {
  return (await findPlan(tx, sessionId)) ?? notPlanned(sessionId)
}

/** @throws AppError `notFound`. */
export async function getMatchPlan(tx: ClubTx, sessionId: string): Promise<StoredPlan<MatchPlan>> {
  return (await findMatchPlan(tx, sessionId)) ?? notPlanned(sessionId)
}

function notPlanned(sessionId: string): never {
  throw new AppError('notFound', `no plan of session ${sessionId}`)
}

async function findOfKind<Plan>(
  tx: ClubTx,
  sessionId: string,
  { kind, shape }: { readonly kind: Session['kind']; readonly shape: z.ZodType<Plan> },
): Promise<StoredPlan<Plan> | null> {
  if (!isId(sessionId)) return null
  const row = await tx.db.sessionPlan.findUnique({
    where: { clubId_sessionId: { clubId: tx.clubId, sessionId }, session: { kind } },
    select: { sessionId: true, version: true, plan: true, madeById: true, madeAt: true },
  })
  return row && { ...row, plan: shape.parse(row.plan) }
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
    readonly plan: AnyPlan
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
  }: Pick<StoredPlan<AnyPlan>, 'sessionId' | 'version' | 'plan'> & { readonly at: Date },
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
): Promise<readonly Pick<Session, 'id' | 'kind'>[]> {
  const rows = await tx.db.sessionPlan.findMany({
    where: {
      clubId: tx.clubId,
      forgottenAt: null,
      session: {
        OR: [
          { day: { lt: dateOf(before) }, written: { not: 'notWritten' } },
          { day: { lte: dateOf(lastDay) } },
        ],
      },
    },
    select: { session: { select: { id: true, kind: true } } },
    orderBy: { sessionId: 'asc' },
  })
  return rows.map(({ session }) => session)
}
