import 'server-only'
import { z } from 'zod'
import { Prisma } from '#data/generated/client'
import type { ClubTx } from '#data/in-club'
import { sql } from '#data/sql'

/** Whether a sign-in opens another club too: then nobody of this one may decide over it. */
export async function isKnownElsewhere(tx: ClubTx, loginId: string): Promise<boolean> {
  const rows = await sql(
    tx,
    z.object({ clubId: z.string() }),
    Prisma.sql`select "clubId" from list_people_of_login(${loginId}::uuid)`,
  )
  return rows.some(({ clubId }) => clubId !== tx.clubId)
}
