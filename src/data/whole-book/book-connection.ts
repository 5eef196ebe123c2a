import 'server-only'
import pg from 'pg'

/** Values are written as text in one way, whatever the server or the role is set to. */
const oneSpelling = `
  set datestyle = 'ISO, YMD'; set intervalstyle = 'iso_8601'; set timezone = 'UTC'; set bytea_output = 'hex';
  set extra_float_digits = 1; set client_encoding = 'UTF8'; set statement_timeout = 0; set row_security = on`

/**
 * One connection of the owner of the tables, for work on the whole book. Whatever is not committed when the work ends
 * is undone.
 */
export async function withBookConnection<Answer>(
  ownerUrl: string,
  work: (client: pg.Client) => Promise<Answer>,
): Promise<Answer> {
  const client = new pg.Client({ connectionString: ownerUrl, connectionTimeoutMillis: 10_000 })
  // A connection that is lost fails the statement at hand; unheard, it would end the program.
  client.on('error', () => {})
  await client.connect()
  try {
    await client.query(oneSpelling)
    const answer = await work(client)
    await client.end()
    return answer
  } catch (error) {
    // Not by end(): it would wait for a copy that nobody reads any more.
    client.connection.stream.destroy()
    throw error
  }
}

/** From here to the end of the transaction the tables show the rows of this club. */
export async function enterClub(client: pg.Client, clubId: string): Promise<void> {
  await client.query(`select set_config('app.club_id', $1, true)`, [clubId])
}
