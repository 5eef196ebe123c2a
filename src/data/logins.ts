import 'server-only'
import { z } from 'zod'
import type { ViewerRole } from '#access/viewer'
import { appDatabase, type Database } from '#data/database'
import { personRoleOf } from '#data/enums'

/** Somebody of a club as whom a sign-in is known. */
export type PersonOfLogin = {
  readonly clubId: string
  readonly clubName: string
  readonly isDemo: boolean
  readonly personId: string
  readonly name: string
  readonly role: ViewerRole
}

const personRow = z.object({
  clubId: z.string(),
  clubName: z.string(),
  isDemo: z.boolean(),
  personId: z.string(),
  personName: z.string(),
  personRole: z.enum(personRoleOf),
})

/** As whom a sign-in is known, in every club, by the club's name; ended access is left out. Asked before a club is known. */
export async function listPeopleOfLogin(
  loginId: string,
  database: Database = appDatabase(),
): Promise<readonly PersonOfLogin[]> {
  const rows = await database.$queryRaw`select * from list_people_of_login(${loginId}::uuid)`
  return z
    .array(personRow)
    .parse(rows)
    .map(({ personName, personRole, ...row }) => ({ ...row, name: personName, role: personRole }))
}

/** Deletes a sign-in as whom nobody is known, such as one whose founding failed. */
export async function removeLogin(loginId: string, database: Database = appDatabase()): Promise<void> {
  await database.login.deleteMany({ where: { id: loginId, people: { none: {} } } })
}

/** That its address was shown to be its owner's. */
export async function verifyAddress(
  { loginId, email }: { readonly loginId: string; readonly email: string },
  database: Database = appDatabase(),
): Promise<boolean> {
  const { count } = await database.login.updateMany({
    where: { id: loginId, email },
    data: { emailVerified: true },
  })
  return count > 0
}

/** Gives a sign-in another address, not yet shown to be its owner's. */
export async function changeAddress(
  { loginId, email }: { readonly loginId: string; readonly email: string },
  database: Database = appDatabase(),
): Promise<void> {
  await database.login.update({
    where: { id: loginId },
    data: { email, emailVerified: false },
    select: { id: true },
  })
}
