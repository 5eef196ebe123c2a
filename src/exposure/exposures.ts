import { bookColumns, restColumn } from '#exposure/book-columns'
import { ColumnTally, keyOfColumn, type TallyRow } from '#exposure/column-tally'
import { type Span, spanLength } from '#exposure/span'
import { turnCount, wholeTurns } from '#exposure/whole-turns'

/** What a player got: seconds (fractional only where a middle was split) and turns of a practice. */
export type Got = { seconds: number; turns: number }

/** What everyone got in each column over the spans; only columns that someone sat or waited in. */
export function exposuresOf(
  spans: readonly Span[],
  rules: { readonly middleAttackShare: number },
): readonly TallyRow<Got>[] {
  const tally = new ColumnTally<Got>(() => ({ seconds: 0, turns: 0 }))
  for (const whole of wholeTurns(spans)) addTurn(tally, whole, rules)
  return tally.rows()
}

function addTurn(
  tally: ColumnTally<Got>,
  whole: readonly Span[],
  rules: { readonly middleAttackShare: number },
): void {
  const counts = turnCount(whole)
  for (const [part, span] of whole.entries()) {
    const length = spanLength(span)
    for (const { column: seat, playerIds } of span.seats) {
      for (const { column, weight } of bookColumns(seat, { themeId: span.themeId, ...rules })) {
        const key = keyOfColumn(column)
        for (const playerId of playerIds) {
          const got = tally.at(playerId, column, key)
          got.seconds += length * weight
          got.turns += counts({ part, playerId, role: seat.role })
        }
      }
    }
    const rest = restColumn(span)
    for (const playerId of span.resting) {
      const got = tally.at(playerId, rest)
      got.seconds += length
      got.turns += counts({ part, playerId, role: 'rest' })
    }
  }
}
