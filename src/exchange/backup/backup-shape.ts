import { z } from 'zod'
import { BackupFault, isDamaged } from '#exchange/backup/backup-fault'

const family = 'turnbook/backup@'
export const backupFormat = 'turnbook/backup@1'

const table = z.strictObject({
  name: z.string(),
  columns: z.array(z.string()),
  /** Its rows belong to one club each. */
  isByClub: z.boolean(),
})
// Ids that no RFC 9562 version made are a club's too: the database takes any.
const club = z.strictObject({ id: z.guid(), name: z.string(), isDemo: z.boolean() })
const migration = z.strictObject({ name: z.string(), checksum: z.string() })

const headerShape = z.strictObject({
  format: z.literal(backupFormat),
  madeAt: z.iso.datetime(),
  /** What had been done to the database, in order. */
  migrations: z.array(migration),
  /** In an order in which no row refers to a table that comes later. */
  tables: z.array(table),
  clubs: z.array(club),
})

export type BackupTable = z.output<typeof table>
export type BackupClub = z.output<typeof club>
export type BackupMigration = z.output<typeof migration>
export type BackupHeader = z.output<typeof headerShape>

const sectionShape = z.strictObject({ table: z.string(), clubId: z.guid().nullable() })
const tallyShape = z.strictObject({ rows: z.int().min(0), sha256: z.string() })
const endShape = z.strictObject({ end: z.strictObject({ sections: z.int().min(0), rows: z.int().min(0) }) })

/** The rows of one table, of one club where they belong to clubs. */
export type SectionName = z.output<typeof sectionShape>
/** How many rows a section has, and the hash of their text. */
export type Tally = z.output<typeof tallyShape>
export type BackupEnd = z.output<typeof endShape>

/** @throws BackupFault for what is no backup, one of a newer version, or a damaged one. */
export function readBackupHeader(line: string): BackupHeader {
  const value = parse(line)
  const format = typeof value === 'object' && value && 'format' in value ? String(value.format) : ''
  if (!format.startsWith(family))
    throw new BackupFault('was not made by turnbook backup; a file that was would be right')
  if (format !== backupFormat) {
    throw new BackupFault(
      `is of the form ${format}, which this Turnbook does not know; the newer Turnbook that made it would be right`,
    )
  }
  return fitting(headerShape, value)
}

export function readSectionOrEnd(line: string): SectionName | BackupEnd {
  return fitting(z.union([sectionShape, endShape]), parse(line))
}

export function readTally(line: string): Tally {
  return fitting(tallyShape, parse(line))
}

function parse(line: string): unknown {
  try {
    return JSON.parse(line)
  } catch {
    return null
  }
}

function fitting<Shape extends z.ZodType>(shape: Shape, value: unknown): z.output<Shape> {
  const read = shape.safeParse(value)
  if (!read.success) throw isDamaged('a line of it says nothing that it may say')
  return read.data
}
