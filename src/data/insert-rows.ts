import 'server-only'
import type { ClubTx } from '#data/in-club'

/**
 * Inserts any number of rows in one statement. They travel as one JSON text, which knows nulls and keeps every digit of
 * a number, and PostgreSQL reads each column by the table's own type. The column names are the code's, never a user's.
 */
export async function insertRows<Row extends object>(
  tx: ClubTx,
  table: string,
  rows: readonly Row[],
): Promise<void> {
  const first = rows[0]
  if (!first) return
  const columns = ['clubId', ...Object.keys(first)].map((name) => `"${name}"`).join(', ')
  await tx.db.$executeRawUnsafe(
    `insert into "${table}" (${columns}) select ${columns} from json_populate_recordset(null::"${table}", $1::json)`,
    JSON.stringify(rows.map((row) => ({ clubId: tx.clubId, ...row }))),
  )
}
