import type pg from 'pg'

/** Tables that hold what a review reads of a squad, with the columns whose ids a copy has of its own. */
const copied: Readonly<Record<string, readonly string[]>> = {
  Squad: ['id'],
  Player: ['id'],
  SquadMembership: ['id', 'squadId', 'playerId'],
  ProgrammeEntry: ['squadId'],
  Session: ['id', 'squadId'],
  SessionTotal: ['sessionId'],
  Exposure: ['sessionId', 'playerId'],
  SessionPresence: ['sessionId', 'playerId'],
  FlagState: ['id', 'squadId', 'playerId', 'sinceSessionId'],
  TermReview: ['squadId'],
}

/** Copies every squad of a club with its whole season inside the same club, so many times. */
export async function copySquads(owner: pg.Client, clubId: string, copies: number): Promise<void> {
  // Copies keep every reference of the original, so the checks of each would only prove the copying.
  await owner.query('set session_replication_role = replica')
  for (const [table, own] of Object.entries(copied)) {
    const columns = await owner.query<{ name: string }>(
      `select column_name as name from information_schema.columns
       where table_schema = 'public' and table_name = $1 and is_generated = 'NEVER' order by ordinal_position`,
      [table],
    )
    const names = columns.rows.map(({ name }) => name)
    const values = names.map((name) =>
      own.includes(name) ? `md5(t."${name}" || ' ' || n)::uuid` : `t."${name}"`,
    )
    await owner.query(
      `insert into "${table}" (${names.map((name) => `"${name}"`).join(', ')})
       select ${values.join(', ')} from "${table}" t cross join generate_series(1, ${copies}) as n where t."clubId" = $1`,
      [clubId],
    )
  }
  await owner.query('set session_replication_role = origin')
  await owner.query('vacuum analyze')
}
