import pg from 'pg'

type Statement = { readonly text: string; readonly values: readonly unknown[] }

let recording: Statement[] | null = null
const sent = pg.Client.prototype.query

// Prisma's adapter works through this very class, so whatever it sends is seen here, in order.
pg.Client.prototype.query = function record(this: pg.Client, ...call: unknown[]) {
  const [first, second] = call
  if (recording && typeof first === 'string')
    recording.push({ text: first, values: Array.isArray(second) ? second : [] })
  if (recording && typeof first === 'object' && first !== null && 'text' in first) {
    const { text, values } = first as { text: string; values?: unknown[] }
    const given = Array.isArray(second) ? second : (values ?? [])
    recording.push({ text, values: given })
  }
  return (sent as (...args: unknown[]) => unknown).apply(this, call)
} as typeof sent

/** The statements that `work` sends to the database, transaction included. */
export async function recordSql(work: () => Promise<unknown>): Promise<readonly Statement[]> {
  recording = []
  try {
    await work()
    return recording
  } finally {
    recording = null
  }
}

/** Sends the same statements again, bare: no view, no mapping, rows as the driver gives them. */
export async function replaySql(client: pg.Client, statements: readonly Statement[]): Promise<void> {
  for (const { text, values } of statements) await client.query(text, [...values])
}
