import { closeSync, fsyncSync, openSync, writeSync } from 'node:fs'
import { join } from 'node:path'

/**
 * Erases, at every start, the children whose time is over, in clubs that have set how long names are kept: a club that
 * nobody looks into keeps none of them longer. The pages do the same as they are opened, by src/rights/retention.ts; a
 * test holds the two equal. Each erasure is noted in the data folder too, for backups that are put back later.
 *
 * @param {import('pg').Client} owner
 * @param {string} folder the data folder
 * @returns {Promise<number>} how many children went
 */
export async function forgetChildren(owner, folder) {
  const { rows: clubs } = await owner.query('select id from "Club" where "retentionMonths" is not null')
  let gone = 0
  for (const { id } of clubs) {
    await owner.query('begin')
    try {
      // The tables show their rows inside one club only, to their owner too.
      await owner.query(`select set_config('app.club_id', $1, true)`, [id])
      const { rows: over } = await owner.query(listOver, [id])
      for (const { playerId } of over) if (await erase(owner, { clubId: id, playerId, folder })) gone += 1
      await owner.query('commit')
    } catch (error) {
      await owner.query('rollback')
      // PostgreSQL does not know the club's time zone: its pages know it, and will see to it.
      if (error.code !== '22023') throw error
    }
  }
  return gone
}

const listOver = `
  with club as (
    select "retentionMonths" as months, coalesce("calendarDay", (now() at time zone "timeZone")::date) as today
    from "Club" where id = $1
  ), gone as (
    select m."playerId", max(m."lastDay") as left_on
    from "SquadMembership" m join "Player" p on p."clubId" = m."clubId" and p.id = m."playerId", club
    where m."clubId" = $1 and p."erasedAt" is null
    group by m."playerId", club.today
    having bool_and(m."lastDay" is not null and m."lastDay" < club.today)
  )
  select gone."playerId" from gone
    left join "Season" s on s."clubId" = $1 and gone.left_on between s."firstDay" and s."lastDay", club
  where (coalesce(s."lastDay", gone.left_on) + make_interval(months => club.months))::date < club.today
  order by 1`

async function erase(owner, { clubId, playerId, folder }) {
  // As finely as it is kept, so that the note says the same.
  const { rows } = await owner.query(
    `select erase_child($1, 'retention', at, null) as done, to_char(at at time zone 'utc', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') as at
     from date_trunc('milliseconds', now()) as at`,
    [playerId],
  )
  const [{ done, at: erasedAt }] = rows
  if (!done) return false
  await owner.query(
    `insert into "AuditEntry" ("clubId", id, at, action, "objectKind", "objectId", detail)
     values ($1, gen_random_uuid(), now(), 'eraseChild', 'player', $2, '{"cause": "retention"}')`,
    [clubId, playerId],
  )
  note(join(folder, 'erased.jsonl'), { clubId, playerId, erasedAt, cause: 'retention' })
  return true
}

/** On the disk when it returns. */
function note(path, erasure) {
  const file = openSync(path, 'a', 0o600)
  try {
    writeSync(file, `${JSON.stringify(erasure)}\n`)
    fsyncSync(file)
  } finally {
    closeSync(file)
  }
}
