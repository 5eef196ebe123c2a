import type pg from 'pg'
import type { SeasonJson } from '../support/season-json'

/** The practices of a season as plain tables, for the query below. */
export async function loadSeason(client: pg.Client, season: SeasonJson): Promise<void> {
  await client.query(`
    create temp table player (id text primary key, keeps boolean not null);
    create temp table present (practice int, player text, "from" int, "to" int);
    create temp table turn (id int primary key, practice int, "start" int, "end" int, theme text);
    create temp table seat (turn int, station int, role text, player text);`)
  const rows = { present: [] as unknown[][], turn: [] as unknown[][], seat: [] as unknown[][] }
  for (const [practice, { register, turns }] of (season.practices ?? []).entries()) {
    for (const { player, from, to } of register) rows.present.push([practice, player, from, to])
    for (const turn of turns) {
      const id = rows.turn.length
      rows.turn.push([id, practice, turn.start, turn.end, turn.theme ?? null])
      for (const [station, { attack = [], defend = [], keep = [] }] of turn.stations.entries()) {
        for (const [role, players] of Object.entries({ attack, defend, keep })) {
          for (const player of players) rows.seat.push([id, station, role, player])
        }
      }
    }
  }
  await insert(
    client,
    'player',
    season.players.map(({ id, keeps = true }) => [id, keeps]),
  )
  for (const [table, list] of Object.entries(rows)) await insert(client, table, list)
  await client.query(
    'create index on present (practice); create index on seat (turn); analyze player, present, turn, seat',
  )
}

async function insert(client: pg.Client, table: string, rows: readonly unknown[][]): Promise<void> {
  await client.query(`insert into ${table} select * from json_populate_recordset(null::${table}, $1)`, [
    JSON.stringify(await named(client, table, rows)),
  ])
}

async function named(client: pg.Client, table: string, rows: readonly unknown[][]): Promise<object[]> {
  const { fields } = await client.query(`select * from ${table} limit 0`)
  return rows.map((row) => Object.fromEntries(fields.map((field, index) => [field.name, row[index]])))
}

/** What every player got and was due by role, situation and theme, in one query: the closed form of fair shares in SQL. */
export const ledgerSql = `
with there as (
  select t.id as turn, t."end" - t."start" as length, t.theme, r.player
  from turn t join present r on r.practice = t.practice and r."from" <= t."start" and t."end" <= r."to"
), station as (
  select turn, station, count(*) filter (where role = 'attack') as a, count(*) filter (where role = 'defend') as d
  from seat group by turn, station
), sat as (
  select s.turn, s.player, s.role,
    case when s.role = 'keep' or a = 0 or d = 0 then null
      when a = d then 'level'
      when (a > d) = (s.role = 'attack') then 'outnumbering'
      else 'outnumbered' end as situation
  from seat s join station using (turn, station)
), open as (
  select turn, role, situation, count(*) as seats from sat group by turn, role, situation
), able as (
  select h.turn, h.player, h.length, h.theme, s.role, s.situation, p.keeps or coalesce(s.role = 'keep', false) as able
  from there h join player p on p.id = h.player left join sat s using (turn, player)
), size as (
  select turn, count(*) as n, count(*) filter (where able) as m, count(*) filter (where role = 'keep') as k,
    count(role) as seated
  from able group by turn
), columns as (
  select turn, role, situation, seats from open
  union all select turn, 'rest', null, n - seated from size
), due as (
  select a.player, c.role, c.situation, a.theme,
    a.length * case when c.role = 'keep' then case when a.able then s.k::float8 / s.m else 0 end
      when s.n = s.k then 0
      else (1 - case when a.able and s.k > 0 then s.k::float8 / s.m else 0 end) * c.seats / (s.n - s.k) end as fair,
    0 as got, 0 as turns
  from able a join size s using (turn) join columns c using (turn)
), got as (
  select player, coalesce(role, 'rest') as role, situation, theme, 0::float8 as fair, length as got, 1 as turns from able
)
select player, role, situation, theme, sum(fair) as fair, sum(got)::float8 as got, sum(turns)::int as turns
from (select * from due union all select * from got) as both_sides
group by player, role, situation, theme`
