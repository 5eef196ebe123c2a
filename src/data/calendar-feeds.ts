import 'server-only'
import type { Day } from '#common/time'
import { dateOf, dayOrNull } from '#data/days'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { SquadId } from '#squad/squad'

/** Lets a person's own calendar read the sessions that concern it, by its secret. Of the secret only a hash is kept. */
export type CalendarFeed = {
  readonly id: string
  readonly personId: string
  /** SHA-256 of the secret, as 64 hexadecimal digits. */
  readonly secretHash: string
  /** Only sessions of these, of those that concern the person; empty: of all. */
  readonly squadIds: readonly SquadId[]
  readonly madeAt: Date
  readonly revokedAt: Date | null
  /** Null: never yet. */
  readonly lastReadOn: Day | null
}

const columns = {
  id: true,
  personId: true,
  secretHash: true,
  squadIds: true,
  madeAt: true,
  revokedAt: true,
  lastReadOn: true,
} as const

type Row = Omit<CalendarFeed, 'lastReadOn'> & { readonly lastReadOn: Date | null }

const toFeed = (row: Row): CalendarFeed => ({ ...row, lastReadOn: dayOrNull(row.lastReadOn) })

export async function findCalendarFeed(tx: ClubTx, feedId: string): Promise<CalendarFeed | null> {
  if (!isId(feedId)) return null
  const row = await tx.db.calendarFeed.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: feedId } },
    select: columns,
  })
  return row && toFeed(row)
}

/** What a person's calendar is read by now; null when there is nothing, or it was taken back. */
export async function findStandingFeed(tx: ClubTx, personId: string): Promise<CalendarFeed | null> {
  if (!isId(personId)) return null
  const row = await tx.db.calendarFeed.findFirst({
    where: { clubId: tx.clubId, personId, revokedAt: null },
    select: columns,
    orderBy: [{ madeAt: 'desc' }, { id: 'desc' }],
  })
  return row && toFeed(row)
}

export async function recordCalendarFeed(
  tx: ClubTx,
  { id, personId, secretHash, squadIds, madeAt }: Omit<CalendarFeed, 'revokedAt' | 'lastReadOn'>,
): Promise<void> {
  await tx.db.calendarFeed.createMany({
    data: [{ clubId: tx.clubId, id, personId, secretHash, squadIds: [...squadIds], madeAt }],
  })
}

/** Takes back every one that stands; answers how many that were. From the next request on they open nothing. */
export async function revokeCalendarFeeds(
  tx: ClubTx,
  { personId, at }: { readonly personId: string; readonly at: Date },
): Promise<number> {
  const { count } = await tx.db.calendarFeed.updateMany({
    where: { clubId: tx.clubId, personId, revokedAt: null },
    data: { revokedAt: at },
  })
  return count
}

/** Kept by the day: when somebody's telephone is awake is nobody's business. */
export async function noteFeedRead(
  tx: ClubTx,
  { feedId, day }: { readonly feedId: string; readonly day: Day },
): Promise<void> {
  await tx.db.calendarFeed.updateMany({
    where: { clubId: tx.clubId, id: feedId, revokedAt: null },
    data: { lastReadOn: dateOf(day) },
  })
}
