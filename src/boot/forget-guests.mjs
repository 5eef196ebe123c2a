/**
 * Takes away, at every start, the names of guests who came 28 days ago or earlier and became members nowhere: a club
 * that nobody looks into for a month keeps none of them longer. The pages do the same as they are opened, by
 * src/squad/guest.ts; a test holds the two equal.
 *
 * @param {import('pg').Client} owner
 * @returns {Promise<number>} how many names went
 */
export async function forgetGuestNames(owner) {
  const { rows: clubs } = await owner.query('select id from "Club"')
  let gone = 0
  for (const { id } of clubs) {
    await owner.query('begin')
    try {
      // The tables show their rows inside one club only, to their owner too.
      await owner.query(`select set_config('app.club_id', $1, true)`, [id])
      const { rowCount } = await owner.query(
        `update "Player" p set name = 'Guest' from "Club" c
         where c.id = $1 and p."clubId" = c.id and p.name <> 'Guest'
           and p."guestSince" <= coalesce(c."calendarDay", (now() at time zone c."timeZone")::date) - 28
           and not exists (
             select from "SquadMembership" m where m."clubId" = p."clubId" and m."playerId" = p.id
           )`,
        [id],
      )
      gone += rowCount ?? 0
      await owner.query('commit')
    } catch (error) {
      await owner.query('rollback')
      // PostgreSQL does not know the club's time zone: its pages know it, and will see to the names.
      if (error.code !== '22023') throw error
    }
  }
  return gone
}
