import 'server-only'
import { z } from 'zod'
import { type SumFilter, sessionsOf } from '#data/account-sums'
import { attendanceOf, sessionKindOf, writtenOf } from '#data/enums'
import { Prisma } from '#data/generated/client'
import type { ClubTx } from '#data/in-club'
import { andIn, sql } from '#data/sql'
import type { Attendance } from '#fairness/account'
import type { SessionKind } from '#fairness/standing'
import type { PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'
import type { Written } from '#squad/written'

/** How a player was at the sessions asked for: as a member and as a guest apart. */
export type SummedPresence = {
  readonly squadId: SquadId
  readonly playerId: PlayerId
  readonly kind: SessionKind
  readonly isMember: boolean
  /** Sessions it was there or away, a register having been taken or not. */
  readonly sessions: number
  /** Of those, written ones it was there to be given a turn in. */
  readonly sessionsPlayed: number
  readonly liveSeconds: number
  readonly turnsPresent: number
  readonly longestRestTurns: number
  readonly attendance: Readonly<Record<Attendance, number>>
}

const times = z.int()
const presenceSum = z.object({
  squadId: z.string(),
  playerId: z.string(),
  kind: z.enum(sessionKindOf),
  isMember: z.boolean(),
  sessions: times,
  sessionsPlayed: times,
  liveSeconds: times,
  turnsPresent: times,
  longestRestTurns: times,
  attendance: z.object({
    here: times,
    late: times,
    left: times,
    notPlaying: times,
    out: times,
    away: times,
  } satisfies Record<Attendance, unknown>),
})

/** By squad, player and kind. Themes and situations of the filter do not matter here. */
export async function sumPresences(tx: ClubTx, filter: SumFilter): Promise<readonly SummedPresence[]> {
  const counts = Prisma.join(
    Object.keys(attendanceOf).map(
      (name) => Prisma.sql`${name}::text, count(*) filter (where p.attendance::text = ${name})`,
    ),
  )
  return sql(
    tx,
    presenceSum,
    Prisma.sql`
      with asked as materialized (
        select s.id, s."squadId", s.kind from "Session" s where ${sessionsOf(tx, filter)}
      )
      select asked."squadId", p."playerId", asked.kind::text, p."isMember", count(*)::int as sessions,
        (count(*) filter (where p."liveSeconds" > 0))::int as "sessionsPlayed",
        sum(p."liveSeconds")::int as "liveSeconds", sum(p."turnsPresent")::int as "turnsPresent",
        max(p."longestRestTurns") as "longestRestTurns", json_build_object(${counts}) as attendance
      from asked join "SessionPresence" p on p."clubId" = ${tx.clubId}::uuid and p."sessionId" = asked.id
      where true ${andIn('p."playerId"', filter.playerIds)}
      group by asked."squadId", p."playerId", asked.kind, p."isMember"
      order by asked."squadId", p."playerId", asked.kind, p."isMember"`,
  )
}

/** How many of a squad's sessions were written in which way. */
export type SessionCount = {
  readonly squadId: SquadId
  readonly kind: SessionKind
  readonly written: Written
  readonly sessions: number
}

const countRow = z.object({
  squadId: z.string(),
  kind: z.enum(sessionKindOf),
  written: z.enum(writtenOf),
  sessions: times,
})

/** By squad, kind and way of writing; ways that did not occur are left out. */
export async function countSessions(tx: ClubTx, filter: SumFilter): Promise<readonly SessionCount[]> {
  return sql(
    tx,
    countRow,
    Prisma.sql`
      select s."squadId", s.kind::text, s.written::text, count(*)::int as sessions
      from "Session" s
      where ${sessionsOf(tx, filter)}
      group by s."squadId", s.kind, s.written
      order by s."squadId", s.kind, s.written`,
  )
}
