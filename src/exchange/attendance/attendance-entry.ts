import type { Day, Seconds } from '#common/time'

export const attendanceFields = [
  'name',
  'firstName',
  'lastName',
  'shirt',
  'code',
  'date',
  'mark',
  'kind',
  'title',
  'session',
  'lengthSeconds',
  'fromSecond',
  'toSecond',
  'lateMinutes',
  /** The marks of one day, whose date stands in the header; a file may have many such columns. */
  'marks',
] as const
export type AttendanceField = (typeof attendanceFields)[number]

/** How a player was on a day, as a mark tells it. */
export const markMeanings = ['here', 'late', 'left', 'notPlaying', 'out', 'away', 'nothing'] as const
export type MarkMeaning = (typeof markMeanings)[number]

/** Which session: by its code if the file has one, else by day, kind and title. */
export type SessionName = {
  readonly day: Day
  readonly kind: 'practice' | 'match'
  readonly title: string
  readonly code: string | null
  readonly lengthSeconds: Seconds | null
}

/** One player's mark for one session. Seconds and minutes are null where the file does not say. */
export type AttendanceMark = {
  readonly session: SessionName
  readonly meaning: Exclude<MarkMeaning, 'nothing'>
  readonly lateMinutes: number | null
  readonly fromSecond: Seconds | null
  readonly toSecond: Seconds | null
}

/** A row: one player with one mark (a row per player and day) or many (a column per day). */
export type AttendanceEntry = {
  readonly name: string
  readonly shirt: string | null
  readonly code: string | null
  readonly marks: readonly AttendanceMark[]
}
