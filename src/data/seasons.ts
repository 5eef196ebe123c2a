import 'server-only'
import { AppError } from '#common/app-error'
import type { Day } from '#common/time'
import { dateOf, dayOf } from '#data/days'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { Season, SeasonId } from '#squad/squad'

const columns = {
  id: true,
  name: true,
  firstDay: true,
  lastDay: true,
  terms: {
    select: { id: true, name: true, firstDay: true, lastDay: true },
    orderBy: { firstDay: 'asc' },
  },
} as const

type Dated = { readonly id: string; readonly name: string; readonly firstDay: Date; readonly lastDay: Date }

function toDated({ id, name, firstDay, lastDay }: Dated) {
  return { id, name, firstDay: dayOf(firstDay), lastDay: dayOf(lastDay) }
}

function toSeason(row: Dated & { readonly terms: readonly Dated[] }): Season {
  return { ...toDated(row), terms: row.terms.map(toDated) }
}

/** With their terms, in order of time. */
export async function listSeasons(tx: ClubTx): Promise<readonly Season[]> {
  const rows = await tx.db.season.findMany({
    where: { clubId: tx.clubId },
    select: columns,
    orderBy: { firstDay: 'asc' },
  })
  return rows.map(toSeason)
}

export async function findSeason(tx: ClubTx, seasonId: SeasonId): Promise<Season | null> {
  if (!isId(seasonId)) return null
  const row = await tx.db.season.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: seasonId } },
    select: columns,
  })
  return row && toSeason(row)
}

/** @throws AppError `notFound`. */
export async function getSeason(tx: ClubTx, seasonId: SeasonId): Promise<Season> {
  const season = await findSeason(tx, seasonId)
  if (!season) throw new AppError('notFound', `no season ${seasonId}`)
  return season
}

/** The season that a day lies in; there is never more than one. */
export async function findSeasonOn(tx: ClubTx, day: Day): Promise<Season | null> {
  const date = dateOf(day)
  const row = await tx.db.season.findFirst({
    where: { clubId: tx.clubId, firstDay: { lte: date }, lastDay: { gte: date } },
    select: columns,
  })
  return row && toSeason(row)
}

/** The database refuses a second season at the same time, and a term outside its season or over another. */
export async function recordSeason(tx: ClubTx, season: Season): Promise<void> {
  const { clubId } = tx
  const dated = ({ id, name, firstDay, lastDay }: Omit<Season, 'terms'>) => ({
    clubId,
    id,
    name,
    firstDay: dateOf(firstDay),
    lastDay: dateOf(lastDay),
  })
  await tx.db.season.createMany({ data: [dated(season)] })
  await tx.db.term.createMany({ data: season.terms.map((term) => ({ ...dated(term), seasonId: season.id })) })
}
