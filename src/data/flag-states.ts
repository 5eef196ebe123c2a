import 'server-only'
import { z } from 'zod'
import { accept, type Result, refuse } from '#common/result'
import type { Author } from '#data/author'
import { dayOf } from '#data/days'
import { Prisma } from '#data/generated/client'
import { isId, newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { StoredFlag } from '#fairness/flags/answer'
import type { Cure } from '#fairness/flags/cure'
import type { Flag } from '#fairness/flags/raise-flags'
import type { SeasonId, SquadId } from '#squad/squad'

/** A flag as it was last judged, and what a coach answered. */
export type FlagState = Flag & {
  readonly id: string
  readonly squadId: SquadId
  readonly seasonId: SeasonId
  readonly status: StoredFlag['status']
  /** The last answer, whether or not the flag has come back since; `size` it had then. */
  readonly acknowledged: {
    readonly by: string
    readonly at: Date
    readonly reason: string
    readonly size: number
  } | null
  readonly clearedAt: Date | null
}

const seconds = z.number()
const cure: z.ZodType<Cure> = z.union([
  z.strictObject({ kind: z.enum(['moreTurns', 'fewerTurns', 'longerTurns']), turns: z.int(), seconds }),
  z.strictObject({ kind: z.enum(['moreMatchTime', 'lessMatchTime']), turns: z.null(), seconds }),
  z.strictObject({ kind: z.literal('advice'), turns: z.null(), seconds: z.null() }),
])
const flagDetail = z.strictObject({
  turnGap: z.number().optional(),
  gainPerTurn: z.number().optional(),
  sessionIds: z.array(z.string()).optional(),
  cure,
})

/** By player, rule and subject. Cleared ones too, unless some statuses are asked for. */
export async function listFlagStates(
  tx: ClubTx,
  at: {
    readonly squadIds: readonly SquadId[]
    readonly seasonId: SeasonId
    readonly statuses?: readonly StoredFlag['status'][]
  },
): Promise<readonly FlagState[]> {
  if (!isId(at.seasonId)) return []
  const rows = await tx.db.flagState.findMany({
    where: {
      clubId: tx.clubId,
      seasonId: at.seasonId,
      squadId: { in: at.squadIds.filter(isId) },
      ...(at.statuses && { status: { in: [...at.statuses] } }),
    },
    omit: { clubId: true },
    include: { acknowledgedBy: { select: { name: true } } },
    orderBy: [{ squadId: 'asc' }, { playerId: 'asc' }, { rule: 'asc' }, { scope: 'asc' }, { subject: 'asc' }],
  })
  return rows.map((row) => {
    const { id, squadId, seasonId, playerId, rule, scope, subject, status, isClosing, clearedAt } = row
    const { gapSeconds, toleranceSeconds, size, sinceSessionId } = row
    return {
      id,
      squadId,
      seasonId,
      playerId,
      rule,
      scope,
      subject,
      status,
      since: dayOf(row.since),
      sinceSessionId,
      isClosing,
      gapSeconds,
      toleranceSeconds,
      size,
      ...flagDetail.parse(row.detail),
      acknowledged: toAnswer(row),
      clearedAt,
    }
  })
}

function toAnswer(row: {
  readonly acknowledgedBy: { readonly name: string } | null
  readonly acknowledgedAt: Date | null
  readonly acknowledgedReason: string | null
  readonly acknowledgedSize: number | null
}): FlagState['acknowledged'] {
  const { acknowledgedBy, acknowledgedAt: at, acknowledgedReason: reason, acknowledgedSize: size } = row
  return acknowledgedBy && at && reason !== null && size !== null
    ? { by: acknowledgedBy.name, at, reason, size }
    : null
}

/** A flag with the status that meeting its stored state gave it. */
export type JudgedFlag = { readonly flag: Flag; readonly status: Exclude<StoredFlag['status'], 'cleared'> }

/**
 * Makes whoever else judges the squad wait until the transaction ends, so that two judgements cannot raise one flag
 * twice. Taken after the locks of sessions, never before them.
 */
export async function lockFlags(tx: ClubTx, squadId: SquadId): Promise<void> {
  await tx.db.$queryRaw(
    Prisma.sql`select pg_advisory_xact_lock(hashtextextended(${`flags ${squadId}`}, 0))::text`,
  )
}

const judgedColumns = `status, since, "sinceSessionId", "isClosing", "gapSeconds", "toleranceSeconds", size, detail`
const ofSameKey = ['clubId', 'squadId', 'seasonId', 'playerId', 'rule', 'scope', 'subject']
  .map((name) => `kept."${name}" = judged."${name}"`)
  .join(' and ')

/** Keeps what the rules found now; answers given before stay beside it. Callers hold `lockFlags`. */
export async function saveFlags(
  tx: ClubTx,
  at: { readonly squadId: SquadId; readonly seasonId: SeasonId; readonly judged: readonly JudgedFlag[] },
): Promise<void> {
  if (at.judged.length === 0) return
  const rows = JSON.stringify(at.judged.map(({ flag, status }) => rowOfFlag(tx, { ...at, flag, status })))
  await tx.db.$executeRawUnsafe(
    `update "FlagState" kept set (${judgedColumns}, "clearedAt") =
       (judged.${judgedColumns.replaceAll(', ', ', judged.')}, null)
     from json_populate_recordset(null::"FlagState", $1::json) judged where ${ofSameKey}`,
    rows,
  )
  await tx.db.$executeRawUnsafe(
    `insert into "FlagState" ("clubId", id, "squadId", "seasonId", "playerId", rule, scope, subject, ${judgedColumns})
     select "clubId", id, "squadId", "seasonId", "playerId", rule, scope, subject, ${judgedColumns}
     from json_populate_recordset(null::"FlagState", $1::json) judged
     where not exists (select from "FlagState" kept where ${ofSameKey})`,
    rows,
  )
}

function rowOfFlag(tx: ClubTx, at: JudgedFlag & { readonly squadId: SquadId; readonly seasonId: SeasonId }) {
  const { flag, squadId, seasonId, status } = at
  const {
    playerId,
    rule,
    scope,
    subject,
    since,
    sinceSessionId,
    isClosing,
    gapSeconds,
    toleranceSeconds,
    size,
  } = flag
  const { turnGap, gainPerTurn, sessionIds, cure } = flag
  return {
    clubId: tx.clubId,
    id: newId(),
    squadId,
    seasonId,
    playerId,
    rule,
    scope,
    subject,
    status,
    since,
    sinceSessionId,
    isClosing,
    gapSeconds,
    toleranceSeconds,
    size,
    detail: { turnGap, gainPerTurn, sessionIds, cure },
  }
}

/** Flags that the rules no longer find. */
export async function clearFlags(
  tx: ClubTx,
  at: { readonly flagIds: readonly string[]; readonly at: Date },
): Promise<void> {
  await tx.db.flagState.updateMany({
    where: { clubId: tx.clubId, id: { in: [...at.flagIds] }, status: { not: 'cleared' } },
    data: { status: 'cleared', clearedAt: at.at },
  })
}

/** A coach's answer: the flag keeps silent until it gets worse than it is now. Refused when it is not there, or cleared. */
export async function acknowledgeFlag(
  tx: ClubTx,
  at: {
    readonly flagId: string
    readonly reason: string
    readonly by: Author & { readonly personId: string }
  },
): Promise<Result<null, 'unknown' | 'cleared'>> {
  if (!isId(at.flagId)) return refuse('unknown')
  const key = { clubId_id: { clubId: tx.clubId, id: at.flagId } }
  const flag = await tx.db.flagState.findUnique({ where: key, select: { status: true, size: true } })
  if (!flag) return refuse('unknown')
  if (flag.status === 'cleared') return refuse('cleared')
  await tx.db.flagState.update({
    where: key,
    data: {
      status: 'acknowledged',
      acknowledgedById: at.by.personId,
      acknowledgedAt: at.by.at,
      acknowledgedReason: at.reason,
      acknowledgedSize: flag.size,
    },
    select: { id: true },
  })
  return accept(null)
}

/** Which squad a flag is about, for who may answer it; null when there is no such flag. */
export async function findFlagPlace(
  tx: ClubTx,
  flagId: string,
): Promise<{ readonly squadId: SquadId; readonly playerId: string } | null> {
  if (!isId(flagId)) return null
  return tx.db.flagState.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: flagId } },
    select: { squadId: true, playerId: true },
  })
}
