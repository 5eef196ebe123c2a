import 'server-only'
import { z } from 'zod'
import { fileSizeProblem } from '#common/file-size'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { isDay } from '#common/time'
import { markMeanings } from '#exchange/attendance/attendance-entry'
import type { AttendanceSettings } from '#exchange/attendance/read-attendance'
import { encodings } from '#exchange/csv/decode-text'
import { separators } from '#exchange/csv/separator'
import { type RowAnswers, readAnswers } from '#exchange/players/answer'
import { dateOrders } from '#exchange/table/date-form'
import { nameOrders } from '#exchange/table/file-settings'

const fileKinds = ['roster', 'attendance', 'calendar', 'log'] as const

const minutes = z.coerce.number().pipe(z.int('write whole minutes').min(1).max(600))

/** What the page sends: the file itself each time, so that nothing of it is kept here between a look and the import. */
export const fileInput = z.object({
  squadId: z.string(),
  what: z.enum(fileKinds),
  file: z.instanceof(File, { error: 'Choose a file first.' }),
  encoding: z.enum(encodings).nullable().default(null),
  separator: z.enum(separators).nullable().default(null),
  headerLine: z.int().min(0).nullable().default(null),
  columns: z.array(z.string().max(40)).max(500).nullable().default(null),
  dateOrder: z.enum(dateOrders).nullable().default(null),
  nameOrder: z.enum(nameOrders).nullable().default(null),
  marks: z.record(z.string().max(200), z.enum(markMeanings)).default({}),
  answers: z.record(z.string().regex(/^\d{1,7}$/), z.string().max(60)).default({}),
  leftOutSessions: z.array(z.string().max(400)).max(5000).default([]),
  defaultFirstDay: z.string().refine(isDay, 'write the day like 2026-12-31').nullable().default(null),
  lengthMinutes: minutes.default(60),
  lateMinutes: minutes.default(10),
  newPlayers: z.enum(['ask', 'add']).nullable().default(null),
})
export type FileInput = z.output<typeof fileInput>

export function settingsOf(input: FileInput): AttendanceSettings {
  const { encoding, separator, headerLine, columns, dateOrder, nameOrder, marks } = input
  return { encoding, separator, headerLine, columns, dateOrder, nameOrder, marks }
}

export function answersOf(input: FileInput): RowAnswers {
  return readAnswers(input.answers)
}

/** The bytes of the file, unless it is larger than can be taken. */
export async function readBytes(file: File): Promise<Result<Uint8Array, Problem>> {
  const problem = fileSizeProblem(file.size)
  if (problem) return refuse(problem)
  return accept(new Uint8Array(await file.arrayBuffer()))
}
