import 'server-only'
import { AppError } from '#common/app-error'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { matchFormatShape } from '#exchange/match-format-json'
import type { ClubFormat, FormatId } from '#match/format/club-format'
import type { MatchFormat } from '#match/format/match-format'
import type { SquadId } from '#squad/squad'

const columns = { id: true, name: true, definition: true, takenFrom: true, archivedAt: true } as const

type FormatRow = {
  readonly id: string
  readonly name: string
  readonly definition: unknown
  readonly takenFrom: string | null
  readonly archivedAt: Date | null
}

function toClubFormat({ id, name, definition, takenFrom, archivedAt }: FormatRow): ClubFormat {
  const format = matchFormatShape.parse({ ...(definition as object), name })
  return { id, format, takenFrom, isPutAway: archivedAt !== null }
}

/** The name has a column of its own, so that it stands in one place only. */
function contentsOf({ name, ...definition }: MatchFormat) {
  return { name, definition: structuredClone(definition) as object }
}

/** By players a side, then name; those put away included. */
export async function listMatchFormats(tx: ClubTx): Promise<readonly ClubFormat[]> {
  const rows = await tx.db.matchFormat.findMany({
    where: { clubId: tx.clubId },
    select: columns,
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  })
  return rows.map(toClubFormat).sort((one, other) => one.format.aSide - other.format.aSide)
}

/** Put away or not. */
export async function findMatchFormat(tx: ClubTx, formatId: FormatId): Promise<ClubFormat | null> {
  if (!isId(formatId)) return null
  const row = await tx.db.matchFormat.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: formatId } },
    select: columns,
  })
  return row && toClubFormat(row)
}

/** @throws AppError `notFound`. */
export async function getMatchFormat(tx: ClubTx, formatId: FormatId): Promise<ClubFormat> {
  const format = await findMatchFormat(tx, formatId)
  if (!format) throw new AppError('notFound', `no match format ${formatId}`)
  return format
}

export async function recordMatchFormats(
  tx: ClubTx,
  formats: readonly Omit<ClubFormat, 'isPutAway'>[],
): Promise<void> {
  await tx.db.matchFormat.createMany({
    data: formats.map(({ id, format, takenFrom }) => ({
      clubId: tx.clubId,
      id,
      takenFrom,
      ...contentsOf(format),
    })),
  })
}

/** Holds the format for this transaction, so that two who save at once come one after the other. @throws AppError `notFound`. */
export async function lockMatchFormat(tx: ClubTx, formatId: FormatId): Promise<void> {
  const locked = isId(formatId)
    ? await tx.db.$queryRaw<unknown[]>(Prisma.sql`
        select id from "MatchFormat"
        where "clubId" = ${tx.clubId}::uuid and id = ${formatId}::uuid for no key update`)
    : []
  if (locked.length === 0) throw new AppError('notFound', `no match format ${formatId}`)
}

/** Everything of a format but what it was taken over from, and whether it is put away. */
export async function changeMatchFormat(
  tx: ClubTx,
  { id, format }: Pick<ClubFormat, 'id' | 'format'>,
): Promise<void> {
  await tx.db.matchFormat.update({
    where: { clubId_id: { clubId: tx.clubId, id } },
    data: contentsOf(format),
    select: { id: true },
  })
}

/** Put away at a time, or (null) taken out again. */
export async function putMatchFormatAway(
  tx: ClubTx,
  { id, at }: { readonly id: FormatId; readonly at: Date | null },
): Promise<void> {
  await tx.db.matchFormat.update({
    where: { clubId_id: { clubId: tx.clubId, id } },
    data: { archivedAt: at },
    select: { id: true },
  })
}

/** How a squad's matches are played; null: nobody has said. */
export async function findFormatOfSquad(tx: ClubTx, squadId: SquadId): Promise<ClubFormat | null> {
  if (!isId(squadId)) return null
  const squad = await tx.db.squad.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: squadId } },
    select: { matchFormat: { select: columns } },
  })
  return squad?.matchFormat ? toClubFormat(squad.matchFormat) : null
}

/** Which format each squad plays; squads of which nobody has said it are left out. */
export async function listSquadFormats(tx: ClubTx): Promise<ReadonlyMap<SquadId, FormatId>> {
  const rows = await tx.db.squad.findMany({
    where: { clubId: tx.clubId, matchFormatId: { not: null } },
    select: { id: true, matchFormatId: true },
  })
  return new Map(rows.flatMap(({ id, matchFormatId }) => (matchFormatId ? [[id, matchFormatId]] : [])))
}

/** Null: nobody says. */
export async function setFormatOfSquad(
  tx: ClubTx,
  { squadId, formatId }: { readonly squadId: SquadId; readonly formatId: FormatId | null },
): Promise<void> {
  await tx.db.squad.update({
    where: { clubId_id: { clubId: tx.clubId, id: squadId } },
    data: { matchFormatId: formatId },
    select: { id: true },
  })
}
