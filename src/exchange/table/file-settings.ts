import type { Encoding } from '#exchange/csv/decode-text'
import type { Separator } from '#exchange/csv/separator'
import type { DateOrder } from '#exchange/table/date-form'

export const nameOrders = ['asWritten', 'lastFirst'] as const
/** `lastFirst`: a name with one comma is turned around. */
export type NameOrder = (typeof nameOrders)[number]

/** What a person has said about a file; null: find out. */
export type FileSettings = {
  readonly encoding: Encoding | null
  readonly separator: Separator | null
  /** Line of the header row; 0: there is none. */
  readonly headerLine: number | null
  /** One entry a column, empty: not used. Only for a file with as many columns. */
  readonly columns: readonly string[] | null
  readonly dateOrder: DateOrder | null
  readonly nameOrder: NameOrder | null
}

export const noSettings: FileSettings = {
  encoding: null,
  separator: null,
  headerLine: null,
  columns: null,
  dateOrder: null,
  nameOrder: null,
}

/** The columns a person chose, if they belong to this file, else the guessed ones. */
export function chosenColumns<Field extends string>(
  asked: readonly string[] | null,
  guessed: readonly (Field | null)[],
  fields: readonly Field[],
): readonly (Field | null)[] {
  if (!asked || asked.length !== guessed.length) return guessed
  return asked.map((name) => fields.find((field) => field === name) ?? null)
}
