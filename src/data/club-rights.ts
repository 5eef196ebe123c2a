import 'server-only'
import type { Day } from '#common/time'
import type { ClubTx } from '#data/in-club'
import { readHolidays } from '#rights/holidays'

/** What the club has set for what families may ask, and for how long names are kept. */
export type ClubRights = {
  /** Months after the season in which a child left; null: nobody has decided yet, and nothing goes by itself. */
  readonly retentionMonths: number | null
  readonly askWhom: string
  readonly holidays: readonly Day[]
}

export async function getClubRights(tx: ClubTx): Promise<ClubRights> {
  const { retentionMonths, askWhom, holidays } = await tx.db.club.findUniqueOrThrow({
    where: { id: tx.clubId },
    select: { retentionMonths: true, askWhom: true, holidays: true },
  })
  const read = readHolidays(holidays)
  return { retentionMonths, askWhom, holidays: read.ok ? read.days : [] }
}

export async function saveClubRights(tx: ClubTx, rights: ClubRights): Promise<void> {
  const { retentionMonths, askWhom, holidays } = rights
  await tx.db.club.update({
    where: { id: tx.clubId },
    data: { retentionMonths, askWhom, holidays: holidays.join(' ') },
    select: { id: true },
  })
}
