import 'server-only'
import { z } from 'zod'
import { AppError } from '#common/app-error'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { DesignId, DesignRound, PracticeDesign } from '#practice/design'

/** A design with what the book needs beside its rounds. Lengths in metres. */
export type StoredDesign = PracticeDesign & {
  readonly areaLengthM: number
  readonly areaWidthM: number
  readonly note: string
}

const count = z.int().min(0)
const designRounds: z.ZodType<readonly DesignRound[]> = z.array(
  z.strictObject({
    title: z.string(),
    turnCount: count,
    turnSeconds: count,
    gapSeconds: count,
    stations: z.array(z.strictObject({ attack: count, defend: count, keep: count })),
  }),
)

const columns = {
  id: true,
  name: true,
  themeId: true,
  areaLengthM: true,
  areaWidthM: true,
  note: true,
  rounds: true,
} as const

function toDesign(row: Omit<StoredDesign, 'rounds'> & { readonly rounds: unknown }): StoredDesign {
  return { ...row, rounds: designRounds.parse(row.rounds) }
}

/** By name. */
export async function listDesigns(tx: ClubTx): Promise<readonly StoredDesign[]> {
  const rows = await tx.db.practiceDesign.findMany({
    where: { clubId: tx.clubId },
    select: columns,
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  })
  return rows.map(toDesign)
}

export async function findDesign(tx: ClubTx, designId: DesignId): Promise<StoredDesign | null> {
  if (!isId(designId)) return null
  const row = await tx.db.practiceDesign.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: designId } },
    select: columns,
  })
  return row && toDesign(row)
}

/** @throws AppError `notFound`. */
export async function getDesign(tx: ClubTx, designId: DesignId): Promise<StoredDesign> {
  const design = await findDesign(tx, designId)
  if (!design) throw new AppError('notFound', `no design ${designId}`)
  return design
}

export async function recordDesigns(tx: ClubTx, designs: readonly StoredDesign[]): Promise<void> {
  await tx.db.practiceDesign.createMany({
    data: designs.map(({ id, name, themeId, areaLengthM, areaWidthM, note, rounds }) => ({
      clubId: tx.clubId,
      id,
      name,
      themeId,
      areaLengthM,
      areaWidthM,
      note,
      rounds: structuredClone(rounds) as DesignRound[],
    })),
  })
}
