import 'server-only'
import { isDeepStrictEqual } from 'node:util'
import { z } from 'zod'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { insertRows } from '#data/insert-rows'
import { lockSession } from '#data/sessions'
import { sql } from '#data/sql'
import { matchDeedShape } from '#exchange/match-deed-json'
import { deedShape } from '#exchange/pitch-json'
import type { Deed, PitchEvent } from '#pitch/pitch-event'
import type { MatchDeed } from '#touchline/match-deed'
import type { TappedEvent } from '#touchline/tapped-event'

/** Whose hand tapped: a person of the club, or a helper with a pass. */
export type PitchHand = {
  readonly personId: string | null
  readonly helperPassId: string | null
  readonly at: Date
}

export type PitchEvents<Done = Deed> = {
  /** In the order of their arrival. */
  readonly events: readonly PitchEvent<Done>[]
  /** The place of the last of them in that order; where there are none, what was asked for. */
  readonly cursor: number
}

const columns = { id: true, deviceId: true, at: true, seq: true, deed: true } as const

/** A phone in somebody's hand. What another hand sent in the name of the same phone is not its own. */
export type PhoneInHand = Omit<PitchHand, 'at'> & { readonly deviceId: string }

type Asked = {
  readonly sessionId: string
  /** A place in the order of arrival. */
  readonly after?: number
  /** But for what this phone sent itself. */
  readonly notFrom?: PhoneInHand | null
}

/** What was tapped in a practice. */
export function listPitchEvents(tx: ClubTx, asked: Asked): Promise<PitchEvents> {
  return listTapped(tx, deedShape, asked)
}

/** What was tapped beside a match. */
export function listMatchEvents(tx: ClubTx, asked: Asked): Promise<PitchEvents<MatchDeed>> {
  return listTapped(tx, matchDeedShape, asked)
}

/**
 * A guest's name stands with the player it became, not in what was tapped, which nobody can take back: here it is put in
 * again, as it is kept now.
 */
async function listTapped<Done>(
  tx: ClubTx,
  shape: z.ZodType<Done>,
  { sessionId, after = 0, notFrom = null }: Asked,
): Promise<PitchEvents<Done>> {
  if (!isId(sessionId)) return { events: [], cursor: after }
  const rows = await tx.db.pitchEvent.findMany({
    where: { clubId: tx.clubId, sessionId, seq: { gt: after } },
    select: { ...columns, recordedById: true, helperPassId: true },
    orderBy: { seq: 'asc' },
  })
  const others = rows.filter(
    (row) =>
      row.deviceId !== notFrom?.deviceId ||
      row.recordedById !== notFrom.personId ||
      row.helperPassId !== notFrom.helperPassId,
  )
  const names = await namesOfGuests(tx, others)
  return {
    events: others.map((row) => toEvent(row, { shape, names })),
    cursor: rows.at(-1)?.seq ?? after,
  }
}

type Row = {
  readonly id: string
  readonly deviceId: string
  readonly at: Date
  readonly seq: number
  readonly deed: unknown
}

function toEvent<Done>(
  { id, deviceId, at, deed }: Row,
  { shape, names }: { readonly shape: z.ZodType<Done>; readonly names: ReadonlyMap<string, string> },
): PitchEvent<Done> {
  const guestId = guestIdOf(deed)
  const whole = guestId === null ? deed : { ...(deed as object), name: names.get(guestId) ?? 'Guest' }
  return { id, deviceId, at: at.getTime(), deed: shape.parse(whole) }
}

function guestIdOf(deed: unknown): string | null {
  const { kind, playerId } = deed as { readonly kind?: unknown; readonly playerId?: unknown }
  return kind === 'guest' && typeof playerId === 'string' ? playerId : null
}

async function namesOfGuests(tx: ClubTx, rows: readonly Row[]): Promise<ReadonlyMap<string, string>> {
  const ids = rows.flatMap(({ deed }) => guestIdOf(deed) ?? [])
  if (ids.length === 0) return new Map()
  const players = await tx.db.player.findMany({
    where: { clubId: tx.clubId, id: { in: ids } },
    select: { id: true, name: true },
  })
  return new Map(players.map(({ id, name }) => [id, name]))
}

/** How events met what is there already; each of those asked about stands in one of the lists. */
export type MetEvents<Event extends TappedEvent> = {
  readonly fresh: readonly Event[]
  /** There already, just so: sent again by a phone that never heard that they had arrived. */
  readonly known: readonly string[]
  /** There already under the same id with another content. */
  readonly clashing: readonly string[]
  /** The last place in the order of arrival that is taken. */
  readonly lastSeq: number
}

/**
 * Holds what a phone sends against what is there. The practice is locked until the transaction ends, so that places in
 * the order of arrival become seen in that order, and a cursor never passes one over.
 * @throws AppError `notFound` when the session is not there.
 */
export async function meetPitchEvents<Event extends TappedEvent>(
  tx: ClubTx,
  { sessionId, events }: { readonly sessionId: string; readonly events: readonly Event[] },
): Promise<MetEvents<Event>> {
  await lockSession(tx, sessionId)
  const rows = await tx.db.pitchEvent.findMany({
    where: { clubId: tx.clubId, id: { in: events.map(({ id }) => id) } },
    select: { ...columns, sessionId: true },
  })
  const contents = new Map(rows.map((row) => [row.id, contentOf({ ...row, at: row.at.getTime() })]))
  const own = new Set(rows.filter((row) => row.sessionId === sessionId).map(({ id }) => id))
  const [fresh, known, clashing]: [Event[], Set<string>, Set<string>] = [[], new Set(), new Set()]
  for (const event of events) {
    const there = contents.get(event.id)
    if (!there) {
      contents.set(event.id, contentOf(event))
      own.add(event.id)
      fresh.push(event)
    } else if (!own.has(event.id) || !isDeepStrictEqual(there, contentOf(event))) {
      clashing.add(event.id)
    } else if (!fresh.some(({ id }) => id === event.id)) {
      known.add(event.id)
    }
  }
  const last = await tx.db.pitchEvent.aggregate({
    where: { clubId: tx.clubId, sessionId },
    _max: { seq: true },
  })
  return { fresh, known: [...known], clashing: [...clashing], lastSeq: last._max.seq ?? 0 }
}

/** What must be the same for two sendings of one event to be one; a guest's name is not kept with it. */
function contentOf({ deviceId, at, deed }: Omit<PitchEvent, 'deed' | 'id'> & { readonly deed: unknown }) {
  return JSON.parse(JSON.stringify({ deviceId, at, deed: keptDeed(deed) }))
}

function keptDeed(deed: unknown): unknown {
  return guestIdOf(deed) === null ? deed : { ...(deed as object), name: '' }
}

/** Writes events behind `lastSeq`. To be called after `meetPitchEvents`, in the same transaction, with what was fresh. */
export async function recordPitchEvents(
  tx: ClubTx,
  {
    sessionId,
    events,
    lastSeq,
    by,
  }: {
    readonly sessionId: string
    readonly events: readonly TappedEvent[]
    readonly lastSeq: number
    readonly by: PitchHand
  },
): Promise<void> {
  const rows = events.map(({ id, deviceId, at, deed }, index) => ({
    id,
    sessionId,
    deviceId,
    at: new Date(at).toISOString(),
    seq: lastSeq + index + 1,
    deed: keptDeed(deed),
    recordedById: by.personId,
    helperPassId: by.helperPassId,
    receivedAt: by.at.toISOString(),
  }))
  await insertRows(tx, 'PitchEvent', rows)
}

/** How many events of each practice there are; practices without any are not in the map. */
export async function countPitchEvents(
  tx: ClubTx,
  sessionIds: readonly string[],
): Promise<ReadonlyMap<string, number>> {
  const rows = await tx.db.pitchEvent.groupBy({
    by: ['sessionId'],
    where: { clubId: tx.clubId, sessionId: { in: sessionIds.filter(isId) } },
    _count: { id: true },
  })
  return new Map(rows.map(({ sessionId, _count }) => [sessionId, _count.id]))
}

/** The room that taps take: their number, their length as JSON in bytes, and the new faces among them. */
export type PitchRoom = { readonly events: number; readonly bytes: number; readonly guests: number }

const roomRow = z.object({
  events: z.int(),
  bytes: z.int(),
  guests: z.int(),
  helperEvents: z.int(),
  helperBytes: z.int(),
  helperGuests: z.int(),
})

/** The room that what was tapped in a practice takes in all, and what came by helpers, with a pass or of the club. */
export async function measurePitch(
  tx: ClubTx,
  sessionId: string,
): Promise<{ readonly inAll: PitchRoom; readonly byHelpers: PitchRoom }> {
  const [row] = await sql(
    tx,
    roomRow,
    Prisma.sql`
      with tapped as (
        select octet_length(deed::text) as bytes, (deed ->> 'kind' = 'guest') as face,
          ("helperPassId" is not null or p.role = 'helper') as helped
        from "PitchEvent" e left join "Person" p on p."clubId" = e."clubId" and p.id = e."recordedById"
        where e."clubId" = ${tx.clubId}::uuid and "sessionId" = ${sessionId}::uuid
      )
      select count(*)::int as events, coalesce(sum(bytes), 0)::int as bytes,
        (count(*) filter (where face))::int as guests, (count(*) filter (where helped))::int as "helperEvents",
        coalesce(sum(bytes) filter (where helped), 0)::int as "helperBytes",
        (count(*) filter (where face and helped))::int as "helperGuests"
      from tapped`,
  )
  const { helperEvents = 0, helperBytes = 0, helperGuests = 0, events = 0, bytes = 0, guests = 0 } = row ?? {}
  return {
    inAll: { events, bytes, guests },
    byHelpers: { events: helperEvents, bytes: helperBytes, guests: helperGuests },
  }
}

/** The ids of new faces that were tapped in a practice. */
export async function listPitchGuestIds(tx: ClubTx, sessionId: string): Promise<ReadonlySet<string>> {
  const rows = await tx.db.pitchEvent.findMany({
    where: { clubId: tx.clubId, sessionId, deed: { path: ['kind'], equals: 'guest' } },
    select: { deed: true },
  })
  return new Set(rows.flatMap(({ deed }) => guestIdOf(deed) ?? []))
}

/** The ids of what one hand tapped in a practice. */
export async function listIdsByHand(
  tx: ClubTx,
  {
    sessionId,
    hand: { personId, helperPassId },
  }: { readonly sessionId: string; readonly hand: Omit<PitchHand, 'at'> },
): Promise<ReadonlySet<string>> {
  const rows = await tx.db.pitchEvent.findMany({
    where: { clubId: tx.clubId, sessionId, recordedById: personId, helperPassId },
    select: { id: true },
  })
  return new Set(rows.map(({ id }) => id))
}

/** How many events of a practice came by each helper's pass; passes without any are not in the map. */
export async function countTapsByPass(tx: ClubTx, sessionId: string): Promise<ReadonlyMap<string, number>> {
  const rows = await tx.db.pitchEvent.groupBy({
    by: ['helperPassId'],
    where: { clubId: tx.clubId, sessionId, helperPassId: { not: null } },
    _count: { id: true },
  })
  return new Map(
    rows.flatMap(({ helperPassId, _count }) => (helperPassId ? [[helperPassId, _count.id]] : [])),
  )
}
