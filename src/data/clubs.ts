import 'server-only'
import { AppError } from '#common/app-error'
import type { Day } from '#common/time'
import type { Database } from '#data/database'
import { dateOrNull, dayOrNull } from '#data/days'
import type { ClubTx } from '#data/in-club'

export type Club = {
  readonly id: string
  readonly name: string
  /** IANA name, e.g. `Europe/London`. */
  readonly timeZone: string
  /** BCP 47 tag: how days and numbers are written. */
  readonly locale: string
  readonly isDemo: boolean
  /** A demo club's calendar stands still on this day; null: the calendar of its time zone. */
  readonly calendarDay: Day | null
  /** Goals of its matches are written down: a match's, never a child's. */
  readonly countsGoals: boolean
}

/** Null when there is no such club. */
export async function findClub(tx: ClubTx): Promise<Club | null> {
  const row = await tx.db.club.findUnique({ where: { id: tx.clubId } })
  if (!row) return null
  const { id, name, timeZone, locale, isDemo, countsGoals } = row
  return { id, name, timeZone, locale, isDemo, countsGoals, calendarDay: dayOrNull(row.calendarDay) }
}

/** @throws AppError `notFound`. */
export async function getClub(tx: ClubTx): Promise<Club> {
  const club = await findClub(tx)
  if (!club) throw new AppError('notFound', `no club ${tx.clubId}`)
  return club
}

/** Enters a new club, from inside itself: `inClub(club.id, (tx) => recordClub(tx, club), { database: owner })`. The app's role may not. */
export async function recordClub(tx: ClubTx, club: Omit<Club, 'countsGoals'>): Promise<void> {
  const { id, name, timeZone, locale, isDemo } = club
  await tx.db.club.create({
    data: { id, name, timeZone, locale, isDemo, calendarDay: dateOrNull(club.calendarDay) },
    select: { id: true },
  })
}

export async function changeClub(
  tx: ClubTx,
  { name, timeZone }: Pick<Club, 'name' | 'timeZone'>,
): Promise<void> {
  await tx.db.club.update({ where: { id: tx.clubId }, data: { name, timeZone }, select: { id: true } })
}

/** What is written already stays, and is shown again when goals are counted again. */
export async function setCountsGoals(tx: ClubTx, countsGoals: boolean): Promise<void> {
  await tx.db.club.update({ where: { id: tx.clubId }, data: { countsGoals }, select: { id: true } })
}

/** Holds the club for this transaction: what a second one would make twice waits, and then sees the first. */
export async function lockClub(tx: ClubTx): Promise<void> {
  await tx.db.$queryRaw`select id from "Club" where id = ${tx.clubId}::uuid for no key update`
}

/** Every club there is, by the owner's connection; the app's role sees none this way. */
export async function listClubIds(owner: Database): Promise<readonly string[]> {
  const rows = await owner.club.findMany({ select: { id: true }, orderBy: { id: 'asc' } })
  return rows.map(({ id }) => id)
}
