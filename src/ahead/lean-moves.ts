import { type SeatColumn, seatColumns, seatMeaning } from '#ahead/seat-column'
import { rotationColumns } from '#rotation/problem'

/**
 * What one player takes of another in a practice: time of one seat column, for time of a second one or for waiting
 * (`forColumn` null). Columns by their place in their lists; `up` and `down` are the figures of whoever takes that rise
 * and fall by as much, and `plays` is 1 where it plays for longer.
 */
export type LeanMove = {
  readonly column: number
  readonly forColumn: number | null
  readonly up: readonly number[]
  readonly down: readonly number[]
  readonly plays: 0 | 1
}

const figuresOf = (column: SeatColumn) => {
  const { role, situation } = seatMeaning[column]
  return [role, ...(situation ? [situation] : [])].map((own) => rotationColumns.indexOf(own))
}
const rest = rotationColumns.indexOf('rest')

/** Each kind of move once: the other way round it is what the giver does. */
export const leanMoves: readonly LeanMove[] = seatColumns.flatMap((taken, column) => [
  { column, forColumn: null, up: figuresOf(taken), down: [rest], plays: 1 as const },
  ...seatColumns.slice(column + 1).map((given, later) => {
    const [up, down] = [figuresOf(taken), figuresOf(given)]
    return {
      column,
      forColumn: column + 1 + later,
      up: up.filter((own) => !down.includes(own)),
      down: down.filter((own) => !up.includes(own)),
      plays: 0 as const,
    }
  }),
])
