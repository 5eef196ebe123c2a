import 'server-only'
import { appDatabase, type Database } from '#data/database'
import { isId } from '#data/ids'

/** A browser that is signed in, as its owner sees it. */
export type LoginSession = {
  readonly id: string
  readonly signedInAt: Date
  readonly usedAt: Date
  readonly userAgent: string | null
  readonly clubId: string | null
  readonly personId: string | null
}

const columns = {
  id: true,
  createdAt: true,
  updatedAt: true,
  userAgent: true,
  clubId: true,
  personId: true,
} as const

/** Of one sign-in, the one used last first. */
export async function listSessionsOf(
  loginId: string,
  database: Database = appDatabase(),
): Promise<readonly LoginSession[]> {
  const rows = await database.loginSession.findMany({
    where: { loginId, expiresAt: { gt: new Date() } },
    select: columns,
    orderBy: [{ updatedAt: 'desc' }, { id: 'desc' }],
  })
  return rows.map(({ createdAt, updatedAt, ...row }) => ({
    ...row,
    signedInAt: createdAt,
    usedAt: updatedAt,
  }))
}

/** Ends one session, of this sign-in only. False: there is none such. */
export async function endSession(
  at: { readonly loginId: string; readonly sessionId: string },
  database: Database = appDatabase(),
): Promise<boolean> {
  if (!isId(at.sessionId)) return false
  const { count } = await database.loginSession.deleteMany({
    where: { id: at.sessionId, loginId: at.loginId },
  })
  return count > 0
}

/** Ends all sessions of a sign-in, but for the one that is named. */
export async function endSessionsOf(
  { loginId, except = null }: { readonly loginId: string; readonly except?: string | null },
  database: Database = appDatabase(),
): Promise<number> {
  const { count } = await database.loginSession.deleteMany({
    where: { loginId, ...(except ? { id: { not: except } } : {}) },
  })
  return count
}

/** From here on the session looks at a club as this person. */
export async function setSessionPerson(
  sessionId: string,
  { clubId, personId }: { readonly clubId: string; readonly personId: string },
  database: Database = appDatabase(),
): Promise<void> {
  await database.loginSession.updateMany({ where: { id: sessionId }, data: { clubId, personId } })
}

/** That it was used now. */
export async function touchSession(
  sessionId: string,
  at: Date,
  database: Database = appDatabase(),
): Promise<void> {
  await database.loginSession.updateMany({ where: { id: sessionId }, data: { updatedAt: at } })
}

/** Takes away what no longer opens anything: sessions, proofs and counts of attempts that have run out. */
export async function clearRunOut(now: Date, database: Database = appDatabase()): Promise<void> {
  await database.loginSession.deleteMany({ where: { expiresAt: { lte: now } } })
  await database.loginProof.deleteMany({ where: { expiresAt: { lte: now } } })
  await database.rateLimit.deleteMany({ where: { expire: { lte: BigInt(now.getTime()) } } })
}
