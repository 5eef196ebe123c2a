import 'server-only'
import { z } from 'zod'
import { appDatabase, type Database } from '#data/database'
import type { ClubTx } from '#data/in-club'

const standing = z.tuple([z.object({ hasDemo: z.boolean(), hasClub: z.boolean() })])

/** Which clubs the database holds; asked before anybody is signed in. */
export async function whatStandsHere(
  database: Database = appDatabase(),
): Promise<{ readonly hasDemo: boolean; readonly hasClub: boolean }> {
  const [stands] = standing.parse(await database.$queryRaw`select * from what_stands_here()`)
  return stands
}

/** Whoever founds at the same time waits here until this transaction is over. */
export async function lockFounding(tx: ClubTx): Promise<void> {
  await tx.db.$queryRaw`select 1 from (select pg_advisory_xact_lock(hashtext('found a club'))) as locked`
}

/**
 * The first club, from inside itself, with its administrator.
 * @throws AppError `conflict` where any club stands already.
 */
export async function foundClub(
  tx: ClubTx,
  club: {
    readonly name: string
    readonly timeZone: string
    readonly locale: string
    readonly personId: string
    readonly personName: string
    readonly loginId: string
  },
): Promise<void> {
  const { name, timeZone, locale, personId, personName, loginId } = club
  await tx.db.$queryRaw`select 1 from (select found_club(${name}, ${timeZone}, ${locale}, ${personId}::uuid,
    ${personName}, ${loginId}::uuid)) as founded`
}

/** Where no club stands nobody is known as anybody, and what sign-ins there are were left by a founding that was cut off. */
export async function removeEveryLogin(database: Database = appDatabase()): Promise<void> {
  await database.login.deleteMany({})
}
