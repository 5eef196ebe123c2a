import type pg from 'pg'

/** Tables of a club that a summed page reads, and which of their rows a copy of the club gets. */
const copied: readonly (readonly [table: string, where: string])[] = [
  ['Club', 'true'],
  ['Season', 'true'],
  ['Term', 'true'],
  ['Squad', 'true'],
  ['Player', 'true'],
  ['SquadMembership', 'true'],
  ['Theme', 'true'],
  ['Session', 't.id = any($2)'],
  ['SessionTotal', 't."sessionId" = any($2)'],
  ['Exposure', 't."sessionId" = any($2)'],
  ['SessionPresence', 't."sessionId" = any($2)'],
]

/**
 * Copies a club of two squads until there are `squads` squads in the database, each copy with the first three written
 * sessions of each squad: other clubs are there to be passed over, and need not be thick.
 */
export async function fillToSquads(owner: pg.Client, clubId: string, squads: number): Promise<void> {
  const { rows } = await owner.query<{ count: number }>('select count(*)::int as count from "Squad"')
  const from = Math.ceil((rows[0]?.count ?? 0) / 2)
  const to = Math.ceil(squads / 2)
  if (to <= from) return
  const sessions = await owner.query<{ id: string }>(
    `select id from (select id, row_number() over (partition by "squadId" order by day, id) as place
       from "Session" where "clubId" = $1 and written <> 'notWritten') as numbered where place <= 3`,
    [clubId],
  )
  const sessionIds = sessions.rows.map((row) => row.id)
  // Copies keep every reference of the original, so the checks of each would only prove the copying.
  await owner.query('set session_replication_role = replica')
  for (const [table, where] of copied) await copyTable(owner, { table, where, clubId, sessionIds, from, to })
  await owner.query('set session_replication_role = origin')
  await owner.query('vacuum analyze')
}

type Copy = {
  readonly table: string
  readonly where: string
  readonly clubId: string
  readonly sessionIds: readonly string[]
  readonly from: number
  readonly to: number
}

async function copyTable(owner: pg.Client, copy: Copy): Promise<void> {
  const { table, where, clubId, sessionIds, from, to } = copy
  const club = `md5('copy ' || n)::uuid`
  const own = table === 'Club' ? 'id' : '"clubId"'
  const columns = await owner.query<{ name: string }>(
    `select column_name as name from information_schema.columns
     where table_schema = 'public' and table_name = $1 and is_generated = 'NEVER' order by ordinal_position`,
    [table],
  )
  const names = columns.rows.map((row) => `"${row.name}"`)
  const values = names.map((name) => (name === own || name === `"${own}"` ? club : `t.${name}`))
  const needsSessions = where.includes('$2')
  await owner.query(
    `insert into "${table}" (${names.join(', ')})
     select ${values.join(', ')} from "${table}" t cross join generate_series(${from}, ${to - 1}) as n
     where t.${own} = $1 and ${where}`,
    needsSessions ? [clubId, sessionIds] : [clubId],
  )
}
