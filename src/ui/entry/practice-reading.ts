import { type ColumnSummary, summarizeColumn } from '#practice/column-summary'
import { entrySentence } from '#practice/entry-sentence'
import type { PracticeGrid } from '#practice/grid'
import { thereByColumn } from '#practice/grid-absent'
import { timesOfColumns } from '#practice/grid-times'
import { type ColumnOutcome, outcomesOfGrid } from '#practice/grid-turns'
import { decidePractice, presenceOfEntry } from '#practice/practice-entry'
import type { PlayerId } from '#squad/player'
import type { PresenceLine } from '#squad/presence'
import { entryOf, type PracticeDraft } from '#ui/entry/practice-draft'

/** What the page shows of a draft before it is sent: made by the same rules the server asks. */
export type PracticeReading = {
  readonly grid: PracticeGrid
  readonly titles: readonly string[]
  readonly starts: readonly number[]
  readonly summaries: readonly ColumnSummary[]
  readonly outcomes: readonly ColumnOutcome[]
  readonly there: readonly ReadonlySet<PlayerId>[]
  readonly presence: readonly PresenceLine[]
  /** Columns with something to put right. */
  readonly wrongColumns: ReadonlySet<number>
  readonly sentences: readonly string[]
}

export function readPractice(
  draft: PracticeDraft,
  grid: PracticeGrid,
  nameOf: (id: PlayerId) => string,
): PracticeReading {
  const entry = entryOf(draft, grid)
  const presence = presenceOfEntry(entry)
  const outcomes = outcomesOfGrid(grid, presence)
  const decided = decidePractice(entry)
  const reasons = decided.ok ? [] : decided.reasons
  const titles = grid.columns.map((column, index) => column.title || `Turn ${index + 1}`)
  const columnTitle = (column: number) => titles[column] ?? ''
  return {
    grid,
    titles,
    starts: timesOfColumns(grid.columns).map(({ turns }) => turns[0]?.from ?? 0),
    summaries: outcomes.map((outcome) => summarizeColumn(outcome, presence)),
    outcomes,
    there: thereByColumn(grid, presence),
    presence,
    wrongColumns: new Set(
      reasons.flatMap((reason) =>
        reason.of === 'grid' ? [reason.refusal.column] : reason.of === 'practice' ? [reason.column] : [],
      ),
    ),
    sentences: reasons.map((reason) => entrySentence(reason, { columnTitle, nameOf })),
  }
}
