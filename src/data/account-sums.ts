import 'server-only'
import { z } from 'zod'
import type { Day } from '#common/time'
import { columnLineOf, namesOf, roleOf, sessionKindOf, situationOf } from '#data/enums'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { noThemeId } from '#data/no-theme'
import { andIn, sql } from '#data/sql'
import type { Column, Situation } from '#exposure/column'
import type { SessionKind } from '#fairness/standing'
import { noFigure, type StandingFigure } from '#fairness/standing-figure'
import type { PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'
import type { Written } from '#squad/written'
import type { ThemeId } from '#themes/theme'

/** Which sessions, and which columns of them; whatever is left out is not asked about. Both days included. */
export type SumFilter = {
  readonly squadIds: readonly SquadId[]
  readonly from: Day
  readonly to: Day
  readonly kinds?: readonly SessionKind[]
  readonly writtens?: readonly Written[]
  readonly playerIds?: readonly PlayerId[]
  /** Null among them: turns without a theme. */
  readonly themeIds?: readonly (ThemeId | null)[]
  readonly situations?: readonly Situation[]
}

/** What a player got and was due in one column over the sessions asked for: as a member and as a guest apart. */
export type SummedColumn = Column &
  StandingFigure & {
    readonly squadId: SquadId
    readonly playerId: PlayerId
    readonly kind: SessionKind
    readonly isMember: boolean
  }

export const roleSumRow = z.object({
  squadId: z.string(),
  playerId: z.string(),
  kind: z.enum(sessionKindOf),
  isMember: z.boolean(),
  role: z.enum(roleOf),
  seconds: z.number(),
  turns: z.int(),
  fairSeconds: z.number(),
  fairTurns: z.number(),
  fullFairSeconds: z.number(),
  openGoalFairSeconds: z.number(),
  dueSeconds: z.number(),
  dueTurns: z.number(),
  membersMeanSeconds: z.number(),
})

const sumRow = roleSumRow.extend({
  situation: z.enum(namesOf(situationOf)),
  line: z.enum(namesOf(columnLineOf)),
  themeId: z.string(),
})

/** The sessions a filter asks for, as a condition on `Session` s. */
export function sessionsOf(tx: ClubTx, filter: SumFilter): Prisma.Sql {
  return Prisma.sql`s."clubId" = ${tx.clubId}::uuid and s."squadId" = any(${filter.squadIds.filter(isId)}::uuid[])
    and s.day between ${filter.from}::date and ${filter.to}::date and s."cancelledAt" is null
    ${andIn('s.kind', filter.kinds)}${andIn('s.written', filter.writtens)}`
}

/** The sessions asked for as `asked`, and what was agreed for each of them as `agreed`: before a query on their accounts. */
export function withAsked(tx: ClubTx, filter: SumFilter): Prisma.Sql {
  return Prisma.sql`
      with asked as materialized (
        select s.id, s."squadId", s.kind, s.day from "Session" s where ${sessionsOf(tx, filter)}
      ), agreed as materialized (
        select asked.id, a."playerId", min(a."dueShare") as share
        from asked join "Adjustment" a on a."clubId" = ${tx.clubId}::uuid and a.kind = 'fewerTurns'
          and a."firstDay" <= asked.day and (a."lastDay" is null or a."lastDay" >= asked.day)
        group by 1, 2
      )`
}

/** Rows of `Exposure` e of the sessions of `withAsked`, the share agreed for each as `g.share`. */
export function fromAsked(tx: ClubTx): Prisma.Sql {
  return Prisma.sql`
      from asked
        join "Exposure" e on e."clubId" = ${tx.clubId}::uuid and e."sessionId" = asked.id
        left join agreed g on g.id = asked.id and g."playerId" = e."playerId" and e.role <> 'rest'`
}

/** The figures of such rows, summed. */
export const figureSums = Prisma.sql`
        sum(e.seconds) as seconds, sum(e.turns)::int as turns, sum(e."fairSeconds") as "fairSeconds",
        sum(e."fairTurns") as "fairTurns", sum(e."fullFairSeconds") as "fullFairSeconds",
        sum(e."openGoalFairSeconds") as "openGoalFairSeconds",
        sum(e."fairSeconds" * coalesce(g.share, 1)) as "dueSeconds",
        sum(e."fairTurns" * coalesce(g.share, 1)) as "dueTurns",
        sum(e."membersFairSeconds") as "membersMeanSeconds"`

/**
 * The accounts of sessions summed in the database, by squad, player, kind and column. Practices and matches stay apart.
 * `dueSeconds` is after agreements of fewer turns: what a player gives up of playing is due as waiting, in the same theme.
 */
export async function sumAccounts(tx: ClubTx, filter: SumFilter): Promise<readonly SummedColumn[]> {
  const themeIds = filter.themeIds?.map((id) => id ?? noThemeId)
  const rows = await sql(
    tx,
    sumRow,
    // Sorted after it was summed: sorted before, every row would be moved for the sake of a few hundred sums.
    Prisma.sql`${withAsked(tx, filter)}, summed as materialized (
        select asked."squadId", e."playerId", asked.kind::text, e."isMember", e.role::text, e.situation::text,
          e.line::text, e."themeId", ${figureSums}
        ${fromAsked(tx)}
        where true ${andIn('e."playerId"', filter.playerIds)}${andIn('e."themeId"', themeIds)}
          ${andIn('e.situation', filter.situations)}
        group by asked."squadId", e."playerId", asked.kind, e."isMember", e.role, e.situation, e.line, e."themeId"
      )
      select * from summed
      order by "squadId", "playerId", kind, "isMember", role, situation, line, "themeId"`,
  )
  const columns = rows.map(({ situation, line, themeId, ...row }) => ({
    ...row,
    situation: situationOf[situation],
    line: columnLineOf[line],
    themeId: themeId === noThemeId ? null : themeId,
  }))
  return withWaitingAgreed(columns)
}

/** What agreements take off the dues of playing becomes due as waiting, so that a player's dues still add up to its time. */
function withWaitingAgreed(columns: readonly SummedColumn[]): readonly SummedColumn[] {
  const given = columns.filter((column) => column.dueSeconds < column.fairSeconds)
  if (given.length === 0) return columns
  const sums = new Map(columns.map((column) => [restKey(column), column]))
  for (const column of given) {
    const key = restKey({ ...column, role: 'rest', situation: null, line: null })
    const rest = sums.get(key) ?? { ...column, ...noFigure, role: 'rest', situation: null, line: null }
    sums.set(key, {
      ...rest,
      dueSeconds: rest.dueSeconds + column.fairSeconds - column.dueSeconds,
      dueTurns: rest.dueTurns + column.fairTurns - column.dueTurns,
    })
  }
  return [...sums.values()]
}

function restKey(column: SummedColumn): string {
  const { squadId, playerId, kind, isMember, role, situation, line, themeId } = column
  return [squadId, playerId, kind, isMember, role, situation, line, themeId].join(' ')
}
