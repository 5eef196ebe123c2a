import 'server-only'
import { z } from 'zod'
import { AppError } from '#common/app-error'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { adaptationsShape, designRoundsShape, designSidesShape } from '#exchange/design-json'
import type { DesignId } from '#practice/design'
import { areaUnits, type DesignSheet } from '#practice/design-sheet'

const columns = {
  id: true,
  name: true,
  themeId: true,
  areaLengthM: true,
  areaWidthM: true,
  areaUnit: true,
  isMirrored: true,
  hasHeading: true,
  note: true,
  rounds: true,
  sides: true,
  adaptations: true,
  copiedFromId: true,
  archivedAt: true,
} as const

type Parsed = 'areaUnit' | 'rounds' | 'sides' | 'adaptations'
type DesignRow = Omit<DesignSheet, Parsed | 'isPutAway'> &
  Readonly<Record<Parsed, unknown>> & { readonly archivedAt: Date | null }

const unit = z.enum(areaUnits)

function toSheet({ archivedAt, ...row }: DesignRow): DesignSheet {
  return {
    ...row,
    areaUnit: unit.parse(row.areaUnit),
    rounds: designRoundsShape.parse(row.rounds),
    sides: designSidesShape.parse(row.sides),
    adaptations: adaptationsShape.parse(row.adaptations),
    isPutAway: archivedAt !== null,
  }
}

/** By name, those put away included: a practice may have used them. */
export async function listEveryDesign(tx: ClubTx): Promise<readonly DesignSheet[]> {
  const rows = await tx.db.practiceDesign.findMany({
    where: { clubId: tx.clubId },
    select: columns,
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  })
  return rows.map(toSheet)
}

/** By name, without those put away: what can be chosen. */
export async function listDesigns(tx: ClubTx): Promise<readonly DesignSheet[]> {
  return (await listEveryDesign(tx)).filter(({ isPutAway }) => !isPutAway)
}

/** Put away or not. */
export async function findDesign(tx: ClubTx, designId: DesignId): Promise<DesignSheet | null> {
  if (!isId(designId)) return null
  const row = await tx.db.practiceDesign.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: designId } },
    select: columns,
  })
  return row && toSheet(row)
}

/** @throws AppError `notFound`. */
export async function getDesign(tx: ClubTx, designId: DesignId): Promise<DesignSheet> {
  const design = await findDesign(tx, designId)
  if (!design) throw new AppError('notFound', `no design ${designId}`)
  return design
}

/** A design is copied from one that stands before it in the list, or stood already. */
export async function recordDesigns(tx: ClubTx, designs: readonly DesignSheet[]): Promise<void> {
  for (const design of designs) {
    await tx.db.practiceDesign.createMany({
      data: [{ clubId: tx.clubId, id: design.id, copiedFromId: design.copiedFromId, ...contentsOf(design) }],
    })
  }
}

/** Holds the design for this transaction, so that two who save at once come one after the other. @throws AppError `notFound`. */
export async function lockDesign(tx: ClubTx, designId: DesignId): Promise<void> {
  const locked = isId(designId)
    ? await tx.db.$queryRaw<unknown[]>(Prisma.sql`
        select id from "PracticeDesign"
        where "clubId" = ${tx.clubId}::uuid and id = ${designId}::uuid for no key update`)
    : []
  if (locked.length === 0) throw new AppError('notFound', `no design ${designId}`)
}

/** Everything of a design but what it was copied from, and whether it is put away. */
export async function changeDesign(tx: ClubTx, design: DesignSheet): Promise<void> {
  await tx.db.practiceDesign.update({
    where: { clubId_id: { clubId: tx.clubId, id: design.id } },
    data: contentsOf(design),
    select: { id: true },
  })
}

/** Put away at a time, or (null) taken out again. */
export async function putDesignAway(
  tx: ClubTx,
  { designId, at }: { readonly designId: DesignId; readonly at: Date | null },
): Promise<void> {
  await tx.db.practiceDesign.update({
    where: { clubId_id: { clubId: tx.clubId, id: designId } },
    data: { archivedAt: at },
    select: { id: true },
  })
}

function contentsOf(design: DesignSheet) {
  const { name, themeId, areaLengthM, areaWidthM, areaUnit, isMirrored, hasHeading, note } = design
  return {
    name,
    themeId,
    areaLengthM,
    areaWidthM,
    areaUnit,
    isMirrored,
    hasHeading,
    note,
    rounds: structuredClone(design.rounds) as object[],
    adaptations: structuredClone(design.adaptations) as object[],
    sides: design.sides ? structuredClone(design.sides) : Prisma.DbNull,
  }
}
