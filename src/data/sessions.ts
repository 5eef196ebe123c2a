import 'server-only'
import { z } from 'zod'
import { AppError } from '#common/app-error'
import type { Day, Seconds } from '#common/time'
import type { Author } from '#data/author'
import { dateOf, dayOf } from '#data/days'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { insertRows } from '#data/insert-rows'
import type { Goals } from '#match/goals'
import type { Period } from '#match/match'
import type { DesignId } from '#practice/design'
import type { SquadId } from '#squad/squad'
import type { Written } from '#squad/written'
import type { ThemeId } from '#themes/theme'

/** A practice or a match, held or still to come, without what was written of it. */
export type Session = {
  readonly id: string
  readonly squadId: SquadId
  readonly kind: 'practice' | 'match'
  readonly day: Day
  /** Empty when it has none. */
  readonly title: string
  /** Local time of day as `HH:MM`; null: not known. */
  readonly startsAt: string | null
  /** Where it is; empty: not written. */
  readonly place: string
  /** Whole length of a practice; null when nobody wrote it down. */
  readonly lengthSeconds: Seconds | null
  /** Of a match, in order of time; null in a practice, and while nobody has written them. */
  readonly periods: readonly Period[] | null
  readonly designId: DesignId | null
  /** What a practice to come is planned to be about; what one that was held was about stands in its turns. */
  readonly themeId: ThemeId | null
  readonly written: Written
  readonly writtenById: string | null
  readonly writtenAt: Date | null
  readonly ledById: string | null
  readonly isCancelled: boolean
  /** Its key in the file it was imported from. */
  readonly code: string | null
  /** Of a match; null: not written. Shown only where the club counts goals. */
  readonly goals: Goals | null
}

/** Of a match, as they are kept. */
export const periodList = z.array(z.strictObject({ start: z.int().min(0), end: z.int().min(0) })).nullable()

const columns = {
  id: true,
  squadId: true,
  kind: true,
  day: true,
  title: true,
  startsAt: true,
  place: true,
  lengthSeconds: true,
  periods: true,
  designId: true,
  themeId: true,
  written: true,
  writtenById: true,
  writtenAt: true,
  ledById: true,
  cancelledAt: true,
  code: true,
  ourGoals: true,
  theirGoals: true,
} as const

type Row = Omit<Session, 'day' | 'periods' | 'isCancelled' | 'goals'> & {
  readonly day: Date
  readonly periods: unknown
  readonly cancelledAt: Date | null
  readonly ourGoals: number | null
  readonly theirGoals: number | null
}

function toSession({ cancelledAt, ourGoals, theirGoals, ...row }: Row): Session {
  return {
    ...row,
    day: dayOf(row.day),
    periods: periodList.parse(row.periods),
    isCancelled: cancelledAt !== null,
    goals: ourGoals === null || theirGoals === null ? null : { ours: ourGoals, theirs: theirGoals },
  }
}

/** Both days included. */
export type SquadDays = { readonly squadId: SquadId; readonly from: Day; readonly to: Day }

/** In order of time: by day, then time of day, then id. Cancelled ones too, unless left out. */
export async function listSessions(
  tx: ClubTx,
  at: SquadDays & { readonly kind?: Session['kind']; readonly withCancelled?: boolean },
): Promise<readonly Session[]> {
  if (!isId(at.squadId)) return []
  const rows = await tx.db.session.findMany({
    where: {
      clubId: tx.clubId,
      squadId: at.squadId,
      day: { gte: dateOf(at.from), lte: dateOf(at.to) },
      ...(at.kind && { kind: at.kind }),
      ...(at.withCancelled === false && { cancelledAt: null }),
    },
    select: columns,
    orderBy: [{ day: 'asc' }, { startsAt: { sort: 'asc', nulls: 'first' } }, { id: 'asc' }],
  })
  return rows.map(toSession)
}

export async function findSession(tx: ClubTx, sessionId: string): Promise<Session | null> {
  if (!isId(sessionId)) return null
  const row = await tx.db.session.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: sessionId } },
    select: columns,
  })
  return row && toSession(row)
}

/** @throws AppError `notFound`. */
export async function getSession(tx: ClubTx, sessionId: string): Promise<Session> {
  const session = await findSession(tx, sessionId)
  if (!session) throw new AppError('notFound', `no session ${sessionId}`)
  return session
}

/**
 * Makes whoever else writes this session wait until the transaction ends. Called by everything that writes what a
 * session is made of; readers do not wait. Of several sessions, in order of their ids, so that nobody waits in a ring.
 * @throws AppError `notFound`.
 */
export async function lockSessions(tx: ClubTx, sessionIds: readonly string[]): Promise<void> {
  const wanted = [...new Set(sessionIds)]
  const locked = await tx.db.$queryRaw<unknown[]>(Prisma.sql`
    select id from "Session"
    where "clubId" = ${tx.clubId}::uuid and id = any(${wanted.filter(isId)}::uuid[])
    order by id for no key update`)
  if (locked.length < wanted.length)
    throw new AppError('notFound', `of ${wanted.length} sessions ${locked.length} are there`)
}

export function lockSession(tx: ClubTx, sessionId: string): Promise<void> {
  return lockSessions(tx, [sessionId])
}

/** A session as it is entered: nothing of it is written yet. */
export type NewSession = Omit<
  Session,
  'place' | 'goals' | 'themeId' | 'written' | 'writtenById' | 'writtenAt' | 'isCancelled'
> & {
  readonly place?: string
  readonly themeId?: ThemeId | null
  readonly goals?: Goals | null
}

export async function recordSessions(tx: ClubTx, sessions: readonly NewSession[]): Promise<void> {
  await insertRows(
    tx,
    'Session',
    sessions.map(
      ({
        id,
        squadId,
        kind,
        day,
        title,
        startsAt,
        place = '',
        lengthSeconds,
        periods,
        designId,
        themeId = null,
        ledById,
        code,
        goals = null,
      }) => ({
        id,
        squadId,
        kind,
        day,
        title,
        startsAt,
        place,
        lengthSeconds,
        periods,
        designId,
        themeId,
        ledById,
        code,
        written: 'notWritten',
        ourGoals: goals?.ours ?? null,
        theirGoals: goals?.theirs ?? null,
      }),
    ),
  )
}

type Change = Partial<
  Pick<
    Session,
    | 'day'
    | 'title'
    | 'startsAt'
    | 'place'
    | 'lengthSeconds'
    | 'periods'
    | 'designId'
    | 'themeId'
    | 'ledById'
    | 'goals'
  >
>

/**
 * Changes a session's frame. After a change of day, length or periods its account is to be rebuilt.
 * @throws AppError `notFound`.
 */
export async function changeSession(tx: ClubTx, sessionId: string, change: Change): Promise<void> {
  await lockSession(tx, sessionId)
  const { day, periods, title, startsAt, place, lengthSeconds, designId, themeId, ledById, goals } = change
  await tx.db.session.update({
    where: { clubId_id: { clubId: tx.clubId, id: sessionId } },
    data: {
      title,
      startsAt,
      place,
      lengthSeconds,
      designId,
      themeId,
      ledById,
      // Undefined leaves them; null takes them out.
      ...(goals !== undefined && { ourGoals: goals?.ours ?? null, theirGoals: goals?.theirs ?? null }),
      day: day && dateOf(day),
      periods: periods === null ? Prisma.DbNull : periods?.map(({ start, end }) => ({ start, end })),
    },
    select: { id: true },
  })
}

/**
 * Says how sessions were written, by whom and when; `notWritten` takes it back.
 * @throws AppError `notFound`.
 */
export async function markWritten(
  tx: ClubTx,
  at: { readonly sessionIds: readonly string[]; readonly written: Written; readonly by: Author },
): Promise<void> {
  await lockSessions(tx, at.sessionIds)
  const isWritten = at.written !== 'notWritten'
  await tx.db.session.updateMany({
    where: { clubId: tx.clubId, id: { in: [...at.sessionIds] } },
    data: {
      written: at.written,
      writtenById: isWritten ? at.by.personId : null,
      writtenAt: isWritten ? at.by.at : null,
    },
  })
}

/** A session that was not held. What was written of it stays, and counts for nothing. @throws AppError `notFound`. */
export async function cancelSession(
  tx: ClubTx,
  at: { readonly sessionId: string; readonly by: Author },
): Promise<void> {
  await lockSession(tx, at.sessionId)
  await tx.db.session.updateMany({
    where: { clubId: tx.clubId, id: at.sessionId, cancelledAt: null },
    data: { cancelledAt: at.by.at },
  })
}
