import type { Column } from '#exposure/column'
import type { PlayerId } from '#squad/player'

/** A player's sums in one column. */
export type TallyRow<Sums> = { readonly playerId: PlayerId; readonly column: Column; readonly sums: Sums }

/** Sums by player and column, made while a session is folded. */
export class ColumnTally<Sums> {
  readonly #rows = new Map<PlayerId, Map<string, TallyRow<Sums>>>()

  constructor(readonly nothing: () => Sums) {}

  /** The player's sums in the column, to be added to; begins with nothing. */
  at(playerId: PlayerId, column: Column, key: string = keyOfColumn(column)): Sums {
    let own = this.#rows.get(playerId)
    if (!own) {
      own = new Map()
      this.#rows.set(playerId, own)
    }
    let row = own.get(key)
    if (!row) {
      row = { playerId, column, sums: this.nothing() }
      own.set(key, row)
    }
    return row.sums
  }

  rows(): readonly TallyRow<Sums>[] {
    return [...this.#rows.values()].flatMap((own) => [...own.values()])
  }
}

/** One text for one column. The theme stands last because it may hold any characters. */
export function keyOfColumn(column: Column): string {
  const theme = column.themeId === null ? '' : `=${column.themeId}`
  return `${column.role} ${column.situation} ${column.line} ${theme}`
}
