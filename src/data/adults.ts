import 'server-only'
import type { ViewerRole } from '#access/viewer'
import { AppError } from '#common/app-error'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { Person } from '#data/people'

/** An adult of the club, with how it is reached and signs in. */
export type Adult = Person & {
  /** Where an invitation goes, as the administrator wrote it down. */
  readonly email: string | null
  /** The sign-in that it has claimed; null: none yet. */
  readonly loginId: string | null
  /** From here on its sign-in opens nothing of the club. */
  readonly accessEndedAt: Date | null
}

const columns = { id: true, name: true, role: true, email: true, loginId: true, accessEndedAt: true } as const

/** By name. */
export async function listAdults(tx: ClubTx): Promise<readonly Adult[]> {
  return tx.db.person.findMany({
    where: { clubId: tx.clubId },
    select: columns,
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  })
}

export async function findAdult(tx: ClubTx, personId: string): Promise<Adult | null> {
  if (!isId(personId)) return null
  return tx.db.person.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: personId } },
    select: columns,
  })
}

/** @throws AppError `notFound`. */
export async function getAdult(tx: ClubTx, personId: string): Promise<Adult> {
  const adult = await findAdult(tx, personId)
  if (!adult) throw new AppError('notFound', `no person ${personId}`)
  return adult
}

/** As whom of this club a sign-in is known. */
export async function findAdultOfLogin(tx: ClubTx, loginId: string): Promise<Adult | null> {
  return tx.db.person.findUnique({
    where: { clubId_loginId: { clubId: tx.clubId, loginId } },
    select: columns,
  })
}

export async function recordAdult(tx: ClubTx, adult: Person & Pick<Adult, 'email'>): Promise<void> {
  await tx.db.person.createMany({ data: [{ clubId: tx.clubId, ...adult }] })
}

export async function changeAdult(
  tx: ClubTx,
  personId: string,
  to: { readonly name: string; readonly role: ViewerRole; readonly email: string | null },
): Promise<void> {
  await tx.db.person.update({ where: { clubId_id: { clubId: tx.clubId, id: personId } }, data: to })
}

/** Null gives the access back. */
export async function changeAccess(
  tx: ClubTx,
  { personId, endedAt }: { readonly personId: string; readonly endedAt: Date | null },
): Promise<void> {
  await tx.db.person.update({
    where: { clubId_id: { clubId: tx.clubId, id: personId } },
    data: { accessEndedAt: endedAt },
  })
}

/** Ties a sign-in to somebody who has none yet. False: somebody was quicker. */
export async function claimAdult(
  tx: ClubTx,
  { personId, loginId }: { readonly personId: string; readonly loginId: string },
): Promise<boolean> {
  const { count } = await tx.db.person.updateMany({
    where: { clubId: tx.clubId, id: personId, loginId: null, accessEndedAt: null },
    data: { loginId },
  })
  return count > 0
}

/** Ends every session in which a sign-in is open on this club, or on none yet. */
export async function endSessionsHere(tx: ClubTx, loginId: string): Promise<void> {
  await tx.db.loginSession.deleteMany({
    where: { loginId, OR: [{ clubId: tx.clubId }, { clubId: null }] },
  })
}

/** Signs a sign-in out everywhere. */
export async function endSessions(tx: ClubTx, loginId: string): Promise<void> {
  await tx.db.loginSession.deleteMany({ where: { loginId } })
}

/** Whoever else changes who is what in the club waits until the transaction ends. */
export async function lockAdults(tx: ClubTx): Promise<void> {
  await tx.db.$queryRaw(Prisma.sql`select id from "Club" where id = ${tx.clubId}::uuid for no key update`)
}
