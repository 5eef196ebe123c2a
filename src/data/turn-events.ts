import 'server-only'
import { z } from 'zod'
import { accept, type Result, refuse } from '#common/result'
import type { Author } from '#data/author'
import { groupBySession } from '#data/by-session'
import { seatRoleOf, sideOf } from '#data/enums'
import { Prisma } from '#data/generated/client'
import { isId, newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { insertRows } from '#data/insert-rows'
import { lockSessions } from '#data/sessions'
import { sql } from '#data/sql'
import { placesOfTurn, type SeatRow, turnOfRow } from '#data/turn-rows'
import type { PracticeEvent } from '#practice/event'
import type { Turn } from '#practice/turn'

/** Each list of seats travels as one JSON array of [player, station, role, place], which is far less to read than rows. */
const eventRow = z.object({
  sessionId: z.string(),
  id: z.string(),
  kind: z.enum(['turn', 'passed', 'void']),
  startSecond: z.int().nullable(),
  endSecond: z.int().nullable(),
  round: z.string().nullable(),
  themeId: z.string().nullable(),
  stationCount: z.int().nullable(),
  continuesWait: z.boolean(),
  continuesTurn: z.boolean(),
  chosenBy: z.enum(sideOf).nullable(),
  playerId: z.string().nullable(),
  role: z.enum(seatRoleOf).nullable(),
  lengthSeconds: z.int().nullable(),
  voidsId: z.string().nullable(),
  seats: z.array(z.tuple([z.string(), z.int(), z.enum(seatRoleOf), z.int()])).nullable(),
})
export type EventRow = z.infer<typeof eventRow>

/** Everything that was written of each practice, in the order written. Practices without any are not in the map. */
export async function listEventsOf(
  tx: ClubTx,
  sessionIds: readonly string[],
): Promise<ReadonlyMap<string, readonly PracticeEvent[]>> {
  const rows = await sql(
    tx,
    eventRow,
    Prisma.sql`
      select e."sessionId", e.id, e.kind::text, e."startSecond", e."endSecond", e.round, e."themeId", e."stationCount",
        e."continuesWait", e."continuesTurn", e."chosenBy"::text, e."playerId", e.role::text, e."lengthSeconds", e."voidsId",
        case when e.kind = 'turn' then (
          select json_agg(json_build_array(s."playerId", s.station, s.role, s.place) order by s.station, s.role, s.place)
          from "TurnSeat" s where s."clubId" = e."clubId" and s."turnEventId" = e.id
        ) end as seats
      from "TurnEvent" e
      where e."clubId" = ${tx.clubId}::uuid and e."sessionId" = any(${sessionIds.filter(isId)}::uuid[])
      order by e."sessionId", e.seq`,
  )
  return groupBySession(rows, toEvent)
}

/** Everything that was written of one practice, in the order written. */
export async function listEvents(tx: ClubTx, sessionId: string): Promise<readonly PracticeEvent[]> {
  return (await listEventsOf(tx, [sessionId])).get(sessionId) ?? []
}

function toEvent(row: EventRow): PracticeEvent {
  const { id, kind } = row
  if (kind === 'turn') return { kind, id, turn: turnOfRow(row) }
  if (kind === 'void') return { kind, id, voids: row.voidsId as string }
  return {
    kind,
    id,
    playerId: row.playerId as string,
    role: row.role as keyof typeof seatRoleOf,
    lengthSeconds: row.lengthSeconds as number,
  }
}

type Written<Of> = {
  readonly practices: readonly ({ readonly sessionId: string } & Of)[]
  readonly by: Author
}

/**
 * Writes events of practices after those that stand there, in the order given. Their ids are the caller's: a phone
 * without a signal has given them out already. The database refuses an id twice, a player in two places of a turn,
 * turns that overlap, and a void of anything but an earlier turn or pass of the same practice.
 * @throws AppError `notFound` when a session is not there.
 */
export async function recordEvents(
  tx: ClubTx,
  { practices, by }: Written<{ readonly events: readonly PracticeEvent[] }>,
): Promise<void> {
  const sessionIds = practices.map(({ sessionId }) => sessionId)
  await lockSessions(tx, sessionIds)
  const last = await lastSeqOf(tx, sessionIds)
  const events: object[] = []
  const seats: SeatRow[] = []
  for (const practice of practices) {
    for (const event of practice.events) {
      const seq = (last.get(practice.sessionId) ?? 0) + 1
      last.set(practice.sessionId, seq)
      events.push({
        ...rowOfEvent(event),
        sessionId: practice.sessionId,
        seq,
        recordedById: by.personId,
        recordedAt: by.at,
      })
      if (event.kind === 'turn') seats.push(...placesOfTurn(event.id, event.turn))
    }
  }
  await insertRows(tx, 'TurnEvent', events)
  await insertRows(tx, 'TurnSeat', seats)
}

const emptyRow = {
  startSecond: null,
  endSecond: null,
  round: null,
  themeId: null,
  stationCount: null,
  continuesWait: false,
  continuesTurn: false,
  chosenBy: null,
  playerId: null,
  role: null,
  lengthSeconds: null,
  voidsId: null,
}

function rowOfEvent(event: PracticeEvent) {
  const { id, kind } = event
  if (kind === 'void') return { ...emptyRow, id, kind, voidsId: event.voids }
  if (kind === 'passed') {
    const { playerId, role, lengthSeconds } = event
    return { ...emptyRow, id, kind, playerId, role, lengthSeconds }
  }
  const { start, end, themeId, stations, round = null, chosenBy = null } = event.turn
  const { continuesWait = false, continuesTurn = false } = event.turn
  return {
    ...emptyRow,
    id,
    kind,
    startSecond: start,
    endSecond: end,
    round,
    themeId,
    stationCount: stations.length,
    continuesWait,
    continuesTurn,
    chosenBy,
  }
}

async function lastSeqOf(tx: ClubTx, sessionIds: readonly string[]): Promise<Map<string, number>> {
  const rows = await tx.db.turnEvent.groupBy({
    by: ['sessionId'],
    where: { clubId: tx.clubId, sessionId: { in: [...sessionIds] } },
    _max: { seq: true },
  })
  return new Map(rows.map(({ sessionId, _max }) => [sessionId, _max.seq ?? 0]))
}

/** Writes turns of one practice; the ids given to them, in their order. See `recordEvents`. */
export async function recordTurns(
  tx: ClubTx,
  at: { readonly sessionId: string; readonly turns: readonly Turn[]; readonly by: Author },
): Promise<readonly string[]> {
  const events = at.turns.map((turn) => ({ kind: 'turn' as const, id: newId(), turn }))
  await recordEvents(tx, { practices: [{ sessionId: at.sessionId, events }], by: at.by })
  return events.map(({ id }) => id)
}

/** Writes that players were offered a place and passed; the ids given, in their order. See `recordEvents`. */
export async function recordPassed(
  tx: ClubTx,
  at: {
    readonly sessionId: string
    readonly passed: readonly Omit<Extract<PracticeEvent, { kind: 'passed' }>, 'kind' | 'id'>[]
    readonly by: Author
  },
): Promise<readonly string[]> {
  const events = at.passed.map((pass) => ({ kind: 'passed' as const, id: newId(), ...pass }))
  await recordEvents(tx, { practices: [{ sessionId: at.sessionId, events }], by: at.by })
  return events.map(({ id }) => id)
}

/** Why an event cannot be voided: it is not one of the practice, is a void itself, or is voided already. */
export type VoidRefusal = { readonly eventId: string; readonly reason: 'unknown' | 'isVoid' | 'isVoided' }

/** Voids turns and passes of one practice: all of them, or, with every reason, none. */
export async function voidTurnEvents(
  tx: ClubTx,
  at: { readonly sessionId: string; readonly eventIds: readonly string[]; readonly by: Author },
): Promise<Result<null, VoidRefusal>> {
  await lockSessions(tx, [at.sessionId])
  const rows = await tx.db.turnEvent.findMany({
    where: { clubId: tx.clubId, sessionId: at.sessionId, id: { in: at.eventIds.filter(isId) } },
    select: { id: true, kind: true, voidedBy: { select: { id: true } } },
  })
  const known = new Map(rows.map((row) => [row.id, row]))
  const refusals = at.eventIds.flatMap((eventId, index): VoidRefusal[] => {
    const row = known.get(eventId)
    if (!row) return [{ eventId, reason: 'unknown' }]
    if (row.kind === 'void') return [{ eventId, reason: 'isVoid' }]
    return row.voidedBy || at.eventIds.indexOf(eventId) < index ? [{ eventId, reason: 'isVoided' }] : []
  })
  if (refusals.length > 0) return refuse(...refusals)
  const events = at.eventIds.map((voids) => ({ kind: 'void' as const, id: newId(), voids }))
  await recordEvents(tx, { practices: [{ sessionId: at.sessionId, events }], by: at.by })
  return accept(null)
}

/** Voids one turn or pass; see `voidTurnEvents`. */
export function voidTurnEvent(
  tx: ClubTx,
  at: { readonly sessionId: string; readonly eventId: string; readonly by: Author },
): Promise<Result<null, VoidRefusal>> {
  return voidTurnEvents(tx, { sessionId: at.sessionId, eventIds: [at.eventId], by: at.by })
}
