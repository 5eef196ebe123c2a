import 'server-only'
import { z } from 'zod'
import { Prisma } from '#data/generated/client'
import type { ClubTx } from '#data/in-club'

/**
 * Rows of a query written by hand, each held against a schema: what the database answers is known by its types, not hoped.
 * @throws ZodError when a row is not as the schema says.
 */
export async function sql<Row>(tx: ClubTx, row: z.ZodType<Row>, query: Prisma.Sql): Promise<readonly Row[]> {
  return z.array(row).parse(await tx.db.$queryRaw(query))
}

/** `and <column> in (…)` of enum texts; nothing when no list is given. An empty list matches no row. */
export function andIn(column: string, values: readonly string[] | undefined): Prisma.Sql {
  if (!values) return Prisma.empty
  return Prisma.sql` and ${Prisma.raw(column)}::text = any(${[...values]}::text[])`
}
