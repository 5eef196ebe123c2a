import 'server-only'
import { z } from 'zod'
import { lineLists, linesOf, listsOf, presenceLists, presencesOf } from '#data/account-lists'
import { accountRows } from '#data/account-rows'
import { sessionKindOf, writtenOf } from '#data/enums'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { insertRows } from '#data/insert-rows'
import type { SquadDays } from '#data/sessions'
import { andIn, sql } from '#data/sql'
import type { SessionAccount } from '#fairness/account'

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

const accountRow = z.object({
  sessionId: z.string(),
  day: z.string(),
  kind: z.enum(sessionKindOf),
  written: z.enum(writtenOf),
  liveSeconds: z.int(),
  lines: lineLists.nullable(),
  presences: presenceLists.nullable(),
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
        (select ${listsOf(lineLists)} from (
          select e.* from "Exposure" e
          where e."clubId" = s."clubId" and e."sessionId" = s.id
            and (e.seconds > 0 or e.turns > 0 or e."fairSeconds" > 0 or e."fullFairSeconds" > 0
              or e."openGoalFairSeconds" > 0)
          order by e."playerId", e.role, e.situation, e.line, e."themeId"
        ) rows) as lines,
        (select ${listsOf(presenceLists)} from (
          select p.* from "SessionPresence" p
          where p."clubId" = s."clubId" and p."sessionId" = s.id
          order by p."playerId"
        ) rows) as presences
      from "Session" s left join "SessionTotal" t on t."clubId" = s."clubId" and t."sessionId" = s.id
      where s."clubId" = ${tx.clubId}::uuid and s."squadId" = ${at.squadId}::uuid
        and s.day between ${at.from}::date and ${at.to}::date and s."cancelledAt" is null
        ${andIn('s.kind', at.kinds)}
      order by s.day, s."startsAt" nulls first, s.id`,
  )
  return rows.map((row) => ({ ...row, lines: linesOf(row.lines), presences: presencesOf(row.presences) }))
}
