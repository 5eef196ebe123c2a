import type { Column } from '#exposure/column'
import type { SeatColumn, Span } from '#exposure/span'
import type { ThemeId } from '#themes/theme'

/** A column of the book and how much of a seat's time goes into it. */
export type WeightedColumn = { readonly column: Column; readonly weight: number }

/**
 * Where the time of a seat is booked: into its own column, or, for the middle of a match, split between attack and
 * defend by `middleAttackShare` (0-1). Weights add up to 1; a side of no weight is left out.
 */
export function bookColumns(
  seat: SeatColumn,
  at: { readonly themeId: ThemeId | null; readonly middleAttackShare: number },
): readonly WeightedColumn[] {
  const { role, situation, line } = seat
  if (role !== 'middle') return [{ column: { role, situation, line, themeId: at.themeId }, weight: 1 }]
  const half = (half: 'attack' | 'defend', weight: number): WeightedColumn => ({
    column: { role: half, situation, line, themeId: at.themeId },
    weight,
  })
  return [half('attack', at.middleAttackShare), half('defend', 1 - at.middleAttackShare)].filter(
    (w) => w.weight > 0,
  )
}

/** Where waiting is booked. */
export function restColumn(span: Pick<Span, 'themeId'>): Column {
  return { role: 'rest', situation: null, line: null, themeId: span.themeId }
}
