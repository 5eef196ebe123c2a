import type { Problem } from '#common/problem'

export type FileWhat = 'roster' | 'attendance' | 'calendar' | 'log'

export type SayingChoice = { readonly value: string; readonly label: string }

/** What will become of a row or day, in a sentence, with the answers a person can give. */
export type Saying = {
  readonly tone: 'new' | 'change' | 'same' | 'ask' | 'wrong' | 'passed'
  readonly says: string
  readonly choices: readonly SayingChoice[]
}

export type CheckedRow = { readonly line: number; readonly cells: readonly string[]; readonly saying: Saying }
export type CheckedSession = { readonly key: string; readonly name: string; readonly saying: Saying }

/** How the dates were read: for certain, open between orders, or not all in one order. */
export type Dates =
  | { readonly kind: 'certain'; readonly order: string }
  | { readonly kind: 'open'; readonly orders: readonly string[]; readonly example: string }
  | { readonly kind: 'none'; readonly order: string; readonly example: string }

export type Layout = {
  readonly encoding: string
  readonly separator: string
  /** 0: the file has no header. */
  readonly headerLine: number
  readonly lines: readonly number[]
  readonly headings: readonly string[]
  readonly columns: readonly string[]
  readonly fields: readonly SayingChoice[]
  readonly dates: Dates | null
  /** Null: the file has no names of players. */
  readonly nameOrder: string | null
}

export type MarkShown = { readonly key: string; readonly meaning: string | null; readonly times: number }

/** What a file was understood as. Nothing has been written. */
export type FileCheck = {
  readonly layout: Layout | null
  readonly marks: readonly MarkShown[]
  readonly problems: readonly string[]
  readonly sessions: readonly CheckedSession[]
  readonly rows: readonly CheckedRow[]
  readonly summary: readonly string[]
  readonly defaults: { readonly firstDay: string; readonly newPlayers: string }
  readonly isReady: boolean
}

/** What the person has said about the file; null: find out. */
export type FileSaid = {
  readonly encoding: string | null
  readonly separator: string | null
  readonly headerLine: number | null
  readonly columns: readonly string[] | null
  readonly dateOrder: string | null
  readonly nameOrder: string | null
  readonly marks: Readonly<Record<string, string>>
  readonly answers: Readonly<Record<string, string>>
  readonly leftOutSessions: readonly string[]
  readonly defaultFirstDay: string | null
  readonly lengthMinutes: number
  readonly lateMinutes: number
  readonly newPlayers: string | null
}

export const nothingSaid: FileSaid = {
  encoding: null,
  separator: null,
  headerLine: null,
  columns: null,
  dateOrder: null,
  nameOrder: null,
  marks: {},
  answers: {},
  leftOutSessions: [],
  defaultFirstDay: null,
  lengthMinutes: 60,
  lateMinutes: 10,
  newPlayers: null,
}

export type CheckFile = (
  form: FormData,
) => Promise<
  | { readonly ok: true; readonly value: FileCheck }
  | { readonly ok: false; readonly reasons: readonly Problem[] }
>
