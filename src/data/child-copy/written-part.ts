import 'server-only'
import { z } from 'zod'
import { atSession, instant, instantOrNull, sessionColumns } from '#data/child-copy/at-session'
import { Prisma } from '#data/generated/client'
import type { ClubTx } from '#data/in-club'
import { sql } from '#data/sql'
import { situationsAt } from '#exposure/situation'
import type { ChildCopy } from '#rights/child-copy'
import type { PlayerId } from '#squad/player'

type Part = Pick<ChildCopy, 'register' | 'turns' | 'passed' | 'spells'>

const situationWords = { outnumbering: 'more of us', level: 'even', outnumbered: 'fewer of us' } as const

/** What was written down of a child, what was corrected later included. */
export async function loadWrittenPart(tx: ClubTx, playerId: PlayerId): Promise<Part> {
  const { clubId, db } = tx
  const where = { clubId, playerId }
  const lines = await db.registerLine.findMany({
    where,
    include: { session: sessionColumns },
    orderBy: [{ session: { day: 'asc' } }, { sessionId: 'asc' }, { fromSecond: 'asc' }, { id: 'asc' }],
  })
  const passed = await db.turnEvent.findMany({
    where: { ...where, kind: 'passed' },
    include: { session: sessionColumns, voidedBy: { select: { recordedAt: true } } },
    orderBy: [{ session: { day: 'asc' } }, { seq: 'asc' }],
  })
  const spells = await db.matchSpell.findMany({
    where,
    include: { session: sessionColumns },
    orderBy: [{ session: { day: 'asc' } }, { sessionId: 'asc' }, { startSecond: 'asc' }, { id: 'asc' }],
  })
  return {
    register: lines.map(({ session, state, fromSecond, toSecond, recordedAt, voidedAt }) => ({
      ...atSession(session),
      state,
      from: fromSecond,
      to: toSecond,
      recordedAt: instant(recordedAt),
      correctedAt: instantOrNull(voidedAt),
    })),
    turns: await loadTurns(tx, playerId),
    passed: passed.map(({ session, role, lengthSeconds, recordedAt, voidedBy }) => ({
      ...atSession(session),
      role: role ?? '',
      lengthSeconds: lengthSeconds ?? 0,
      recordedAt: instant(recordedAt),
      correctedAt: instantOrNull(voidedBy?.recordedAt ?? null),
    })),
    spells: spells.map(({ session, line, startSecond, endSecond, recordedAt, voidedAt }) => ({
      ...atSession(session),
      line,
      from: startSecond,
      to: endSecond,
      recordedAt: instant(recordedAt),
      correctedAt: instantOrNull(voidedAt),
    })),
  }
}

const turnRow = z.object({
  day: z.string(),
  squad: z.string(),
  title: z.string(),
  from: z.int(),
  to: z.int(),
  round: z.string().nullable(),
  theme: z.string().nullable(),
  area: z.int(),
  role: z.enum(['attack', 'defend', 'keep']),
  attackers: z.int(),
  defenders: z.int(),
  recordedAt: z.date(),
  correctedAt: z.date().nullable(),
})

/** Of the others in its area only how many they were: what makes it more of us, even or fewer. */
async function loadTurns(tx: ClubTx, playerId: PlayerId): Promise<Part['turns']> {
  const rows = await sql(
    tx,
    turnRow,
    Prisma.sql`
      select s.day::text, q.name as squad, s.title, e."startSecond" as from, e."endSecond" as to, e.round, h.name as theme,
        t.station as area, t.role::text, e."recordedAt", v."recordedAt" as "correctedAt",
        (select count(*)::int from "TurnSeat" a where a."clubId" = t."clubId" and a."turnEventId" = t."turnEventId"
          and a.station = t.station and a.role = 'attack') as attackers,
        (select count(*)::int from "TurnSeat" d where d."clubId" = t."clubId" and d."turnEventId" = t."turnEventId"
          and d.station = t.station and d.role = 'defend') as defenders
      from "TurnSeat" t
        join "TurnEvent" e on e."clubId" = t."clubId" and e.id = t."turnEventId"
        join "Session" s on s."clubId" = t."clubId" and s.id = e."sessionId"
        join "Squad" q on q."clubId" = t."clubId" and q.id = s."squadId"
        left join "Theme" h on h."clubId" = t."clubId" and h.id = e."themeId"
        left join "TurnEvent" v on v."clubId" = t."clubId" and v."voidsId" = e.id
      where t."clubId" = ${tx.clubId}::uuid and t."playerId" = ${playerId}::uuid
      order by s.day, s.id, e."startSecond", e.seq`,
  )
  return rows.map(({ attackers, defenders, recordedAt, correctedAt, ...row }) => {
    const met = row.role === 'keep' ? null : situationsAt({ attackers, defenders })[row.role]
    return {
      ...row,
      kind: 'practice' as const,
      situation: met && situationWords[met],
      recordedAt: instant(recordedAt),
      correctedAt: instantOrNull(correctedAt),
    }
  })
}
