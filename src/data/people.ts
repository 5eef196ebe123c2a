import 'server-only'
import { z } from 'zod'
import type { ViewerRole } from '#access/viewer'
import { AppError } from '#common/app-error'
import { appDatabase, type Database } from '#data/database'
import { personRoleOf } from '#data/enums'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'

/** An adult of the club. */
export type Person = { readonly id: string; readonly name: string; readonly role: ViewerRole }

const columns = { id: true, name: true, role: true } as const

/** By name. */
export async function listPeople(tx: ClubTx): Promise<readonly Person[]> {
  return tx.db.person.findMany({
    where: { clubId: tx.clubId },
    select: columns,
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  })
}

export async function findPerson(tx: ClubTx, personId: string): Promise<Person | null> {
  if (!isId(personId)) return null
  return tx.db.person.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: personId } },
    select: columns,
  })
}

/** @throws AppError `notFound`. */
export async function getPerson(tx: ClubTx, personId: string): Promise<Person> {
  const person = await findPerson(tx, personId)
  if (!person) throw new AppError('notFound', `no person ${personId}`)
  return person
}

export async function recordPeople(tx: ClubTx, people: readonly Person[]): Promise<void> {
  await tx.db.person.createMany({ data: people.map((person) => ({ clubId: tx.clubId, ...person })) })
}

/** Somebody whom the first page of a demo offers to sign in as. */
export type DemoPerson = Person & { readonly clubId: string; readonly clubName: string }

const demoRow = z.object({
  clubId: z.string(),
  clubName: z.string(),
  personId: z.string(),
  personName: z.string(),
  personRole: z.enum(personRoleOf),
})

/**
 * The people of every demo club, by club, role and name. The one question that is asked before a club is known; the
 * database answers it for clubs marked as demo only.
 */
export async function listDemoPeople(database: Database = appDatabase()): Promise<readonly DemoPerson[]> {
  const rows = z.array(demoRow).parse(await database.$queryRaw`select * from list_demo_people()`)
  return rows.map(({ clubId, clubName, personId, personName, personRole }) => ({
    clubId,
    clubName,
    id: personId,
    name: personName,
    role: personRole,
  }))
}
