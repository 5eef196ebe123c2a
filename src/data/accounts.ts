import 'server-only'
import { z } from 'zod'
import { accountRows } from '#data/account-rows'
import { attendanceOf, columnLineOf, roleOf, sessionKindOf, situationOf, writtenOf } from '#data/enums'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { insertRows } from '#data/insert-rows'
import { noThemeId } from '#data/no-theme'
import type { SquadDays } from '#data/sessions'
import { andIn, sql } from '#data/sql'
import type { AccountLine, Attendance, PresenceAccount, SessionAccount } from '#fairness/account'

/** Puts accounts in the place of those kept before for the same sessions. Callers hold the sessions' lock. */
export async function saveAccounts(tx: ClubTx, accounts: readonly SessionAccount[]): Promise<void> {
  await removeAccounts(
    tx,
    accounts.map(({ sessionId }) => sessionId),
  )
  const rows = accounts.map(accountRows)
  await insertRows(
    tx,
    'SessionTotal',
    accounts.map(({ sessionId, liveSeconds }) => ({ sessionId, liveSeconds, rebuiltAt: 'now' })),
  )
  await insertRows(
    tx,
    'Exposure',
    rows.flatMap(({ exposures }) => exposures),
  )
  await insertRows(
    tx,
    'SessionPresence',
    rows.flatMap(({ presences }) => presences),
  )
}

/** Of sessions that no longer count, such as cancelled ones. */
export async function removeAccounts(tx: ClubTx, sessionIds: readonly string[]): Promise<void> {
  const where = { clubId: tx.clubId, sessionId: { in: [...sessionIds] } }
  await tx.db.exposure.deleteMany({ where })
  await tx.db.sessionPresence.deleteMany({ where })
  await tx.db.sessionTotal.deleteMany({ where })
}

type LineRow = readonly [
  playerId: string,
  role: keyof typeof roleOf,
  situation: keyof typeof situationOf,
  line: keyof typeof columnLineOf,
  themeId: string,
  seconds: number,
  turns: number,
  fairSeconds: number,
  fairTurns: number,
  fullFairSeconds: number,
  openGoalFairSeconds: number,
]

type PresenceRow = readonly [
  playerId: string,
  isMember: boolean,
  attendance: Attendance,
  liveSeconds: number,
  turnsPresent: number,
  longestRestTurns: number,
]

const figure = z.number()
const lineRow: z.ZodType<LineRow> = z.tuple([
  z.string(),
  z.enum(Object.keys(roleOf) as (keyof typeof roleOf)[]),
  z.enum(Object.keys(situationOf) as (keyof typeof situationOf)[]),
  z.enum(Object.keys(columnLineOf) as (keyof typeof columnLineOf)[]),
  z.string(),
  figure,
  figure,
  figure,
  figure,
  figure,
  figure,
])
const presenceRow: z.ZodType<PresenceRow> = z.tuple([
  z.string(),
  z.boolean(),
  z.enum(attendanceOf),
  figure,
  figure,
  figure,
])

const accountRow = z.object({
  sessionId: z.string(),
  day: z.string(),
  kind: z.enum(sessionKindOf),
  written: z.enum(writtenOf),
  liveSeconds: z.int(),
  lines: z.array(lineRow),
  presences: z.array(presenceRow),
})

/**
 * The accounts of a squad's sessions that were not cancelled, in order of time; of those never written, without lines.
 * One query, whatever the number of sessions. For sums, `sumAccounts` is far cheaper.
 */
export async function listAccounts(
  tx: ClubTx,
  at: SquadDays & { readonly kinds?: readonly SessionAccount['kind'][] },
): Promise<readonly SessionAccount[]> {
  if (!isId(at.squadId)) return []
  const rows = await sql(
    tx,
    accountRow,
    Prisma.sql`
      select s.id as "sessionId", s.day::text, s.kind::text, s.written::text,
        coalesce(t."liveSeconds", 0) as "liveSeconds",
        coalesce((
          select json_agg(json_build_array(e."playerId", e.role, e.situation, e.line, e."themeId", e.seconds, e.turns,
            e."fairSeconds", e."fairTurns", e."fullFairSeconds", e."openGoalFairSeconds")
            order by e."playerId", e.role, e.situation, e.line, e."themeId")
          from "Exposure" e
          where e."clubId" = s."clubId" and e."sessionId" = s.id
            and (e.seconds > 0 or e.turns > 0 or e."fairSeconds" > 0 or e."fullFairSeconds" > 0
              or e."openGoalFairSeconds" > 0)
        ), '[]') as lines,
        coalesce((
          select json_agg(json_build_array(p."playerId", p."isMember", p.attendance, p."liveSeconds", p."turnsPresent",
            p."longestRestTurns") order by p."playerId")
          from "SessionPresence" p where p."clubId" = s."clubId" and p."sessionId" = s.id
        ), '[]') as presences
      from "Session" s left join "SessionTotal" t on t."clubId" = s."clubId" and t."sessionId" = s.id
      where s."clubId" = ${tx.clubId}::uuid and s."squadId" = ${at.squadId}::uuid
        and s.day between ${at.from}::date and ${at.to}::date and s."cancelledAt" is null
        ${andIn('s.kind', at.kinds)}
      order by s.day, s."startsAt" nulls first, s.id`,
  )
  return rows.map((row) => ({
    ...row,
    lines: row.lines.map(toLine),
    presences: row.presences.map(toPresence),
  }))
}

function toLine(row: LineRow): AccountLine {
  const [playerId, role, situation, line, themeId, seconds, turns, fairSeconds, fairTurns, ...dues] = row
  return {
    playerId,
    role: roleOf[role],
    situation: situationOf[situation],
    line: columnLineOf[line],
    themeId: themeId === noThemeId ? null : themeId,
    seconds,
    turns,
    fairSeconds,
    fairTurns,
    fullFairSeconds: dues[0],
    openGoalFairSeconds: dues[1],
  }
}

function toPresence(row: PresenceRow): PresenceAccount {
  const [playerId, isMember, attendance, liveSeconds, turnsPresent, longestRestTurns] = row
  return { playerId, isMember, attendance, liveSeconds, turnsPresent, longestRestTurns }
}
