import pg from 'pg'

/** One connection as a role, for what is to be asked past the program's own functions. */
export async function askAs<Answer>(
  connectionString: string,
  work: (client: pg.Client) => Promise<Answer>,
): Promise<Answer> {
  const client = new pg.Client({ connectionString })
  await client.connect()
  try {
    return await work(client)
  } finally {
    await client.end()
  }
}

/** What a statement fails with; null when it does not. Nothing of it stays. */
export async function failureOf(
  client: pg.Client,
  statement: string,
): Promise<{
  readonly code: string
  readonly constraint: string | undefined
  readonly message: string
} | null> {
  await client.query('begin')
  try {
    await client.query(statement)
    return null
  } catch (error) {
    if (!(error instanceof pg.DatabaseError)) throw error
    return { code: error.code ?? '', constraint: error.constraint, message: error.message }
  } finally {
    await client.query('rollback')
  }
}
