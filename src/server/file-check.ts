import 'server-only'
import type { MarkReading } from '#exchange/attendance/read-attendance'
import type { Encoding } from '#exchange/csv/decode-text'
import type { Separator } from '#exchange/csv/separator'
import type { Saying, SayingChoice } from '#exchange/saying'
import type { DateReading } from '#exchange/table/date-order'
import type { NameOrder } from '#exchange/table/file-settings'

/** How a table was taken apart, to be shown and changed. */
export type FileLayout = {
  readonly encoding: Encoding
  readonly separator: Separator
  /** Line of the header row, 0 when there is none; `lines` are those it can be. */
  readonly headerLine: number
  readonly lines: readonly number[]
  /** What stands above each column, or its number. */
  readonly headings: readonly string[]
  /** Field of each column, empty when it is not used. */
  readonly columns: readonly string[]
  readonly fields: readonly SayingChoice[]
  /** Null when the file has no dates. */
  readonly dates: DateReading | null
  /** Null when the file has no names of players. */
  readonly nameOrder: NameOrder | null
}

export type CheckedRow = { readonly line: number; readonly cells: readonly string[]; readonly saying: Saying }
export type CheckedSession = { readonly key: string; readonly name: string; readonly saying: Saying }

/** What a file was understood as, and what importing it would do. Nothing has been written. */
export type FileCheck = {
  /** Null for a season log, which has only one way of being read. */
  readonly layout: FileLayout | null
  readonly marks: readonly MarkReading[]
  /** What is wrong with the file as a whole. */
  readonly problems: readonly string[]
  readonly sessions: readonly CheckedSession[]
  readonly rows: readonly CheckedRow[]
  /** What will happen, one sentence each. */
  readonly summary: readonly string[]
  readonly defaults: { readonly firstDay: string; readonly newPlayers: 'ask' | 'add' }
  readonly isReady: boolean
}
