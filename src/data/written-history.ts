import 'server-only'
import { z } from 'zod'
import { lineOf, registerStateOf } from '#data/enums'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { sql } from '#data/sql'
import type { Spell } from '#match/match'
import type { RegisterLine } from '#squad/register'

/** By whom and when; the name is null when no person of the club wrote it. */
export type Hand = { readonly byName: string | null; readonly at: Date }

/** Something that no longer stands: who wrote it, and who corrected it. */
export type Corrected<Value> = { readonly value: Value; readonly written: Hand; readonly corrected: Hand }

const hand = { byName: z.string().nullable(), at: z.date() }
const eventHand = z.object({ id: z.string(), ...hand })

/** Who wrote each event of a practice, voids too, and when; by the event's id. */
export async function listHandsOfEvents(tx: ClubTx, sessionId: string): Promise<ReadonlyMap<string, Hand>> {
  if (!isId(sessionId)) return new Map()
  const rows = await sql(
    tx,
    eventHand,
    Prisma.sql`
      select e.id, p.name as "byName", e."recordedAt" as at
      from "TurnEvent" e left join "Person" p on p."clubId" = e."clubId" and p.id = e."recordedById"
      where e."clubId" = ${tx.clubId}::uuid and e."sessionId" = ${sessionId}::uuid`,
  )
  return new Map(rows.map(({ id, byName, at }) => [id, { byName, at }]))
}

const correctedRow = {
  playerId: z.string(),
  start: z.int(),
  end: z.int(),
  byName: z.string().nullable(),
  at: z.date(),
  voidedByName: z.string().nullable(),
  voidedAt: z.date(),
}
const correctedLine = z.object({ ...correctedRow, state: z.enum(registerStateOf) })
const correctedSpell = z.object({ ...correctedRow, line: z.enum(lineOf) })

/** The register lines of a session that no longer stand, in the order they were corrected. */
export async function listCorrectedLines(
  tx: ClubTx,
  sessionId: string,
): Promise<readonly Corrected<RegisterLine>[]> {
  if (!isId(sessionId)) return []
  const rows = await sql(
    tx,
    correctedLine,
    Prisma.sql`
      select r."playerId", r.state::text, r."fromSecond" as start, r."toSecond" as "end", ${handColumns}
      from "RegisterLine" r ${joinHands}
      where r."clubId" = ${tx.clubId}::uuid and r."sessionId" = ${sessionId}::uuid and r."voidedAt" is not null
      order by r."voidedAt", r."fromSecond", r."playerId"`,
  )
  return rows.map((row) => ({
    value: { playerId: row.playerId, state: row.state, from: row.start, to: row.end },
    ...handsOf(row),
  }))
}

/** The spells of a match that no longer stand, in the order they were corrected. */
export async function listCorrectedSpells(
  tx: ClubTx,
  sessionId: string,
): Promise<readonly Corrected<Spell>[]> {
  if (!isId(sessionId)) return []
  const rows = await sql(
    tx,
    correctedSpell,
    Prisma.sql`
      select r."playerId", r.line::text, r."startSecond" as start, r."endSecond" as "end", ${handColumns}
      from "MatchSpell" r ${joinHands}
      where r."clubId" = ${tx.clubId}::uuid and r."sessionId" = ${sessionId}::uuid and r."voidedAt" is not null
      order by r."voidedAt", r."startSecond", r."playerId"`,
  )
  return rows.map((row) => ({
    value: { playerId: row.playerId, line: row.line, start: row.start, end: row.end },
    ...handsOf(row),
  }))
}

/**
 * A text that is another whenever anything of what was written of a session has changed: pages keep it while somebody
 * types, so that nobody's writing is laid over somebody else's unseen.
 */
export async function getVersion(tx: ClubTx, sessionId: string): Promise<string> {
  const at = Prisma.sql`where "clubId" = ${tx.clubId}::uuid and "sessionId" = ${sessionId}::uuid`
  const [row] = await sql(
    tx,
    z.object({ version: z.string() }),
    Prisma.sql`
      select concat_ws('.',
        (select count(*) from "TurnEvent" ${at}),
        (select concat_ws('-', count(*), count("voidedAt")) from "RegisterLine" ${at}),
        (select concat_ws('-', count(*), count("voidedAt")) from "MatchSpell" ${at}),
        (select concat_ws('-', written, extract(epoch from "writtenAt"), "lengthSeconds", md5(periods::text), "cancelledAt" is not null)
          from "Session" where "clubId" = ${tx.clubId}::uuid and id = ${sessionId}::uuid)) as version`,
  )
  return row?.version ?? ''
}

const handColumns = Prisma.sql`w.name as "byName", r."recordedAt" as at, v.name as "voidedByName", r."voidedAt"`
const joinHands = Prisma.sql`
  left join "Person" w on w."clubId" = r."clubId" and w.id = r."recordedById"
  left join "Person" v on v."clubId" = r."clubId" and v.id = r."voidedById"`

function handsOf(row: { byName: string | null; at: Date; voidedByName: string | null; voidedAt: Date }) {
  return {
    written: { byName: row.byName, at: row.at },
    corrected: { byName: row.voidedByName, at: row.voidedAt },
  }
}
