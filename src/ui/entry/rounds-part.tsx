'use client'

import type { GridColumn, PracticeGrid } from '#practice/grid'
import { gridLimits } from '#practice/grid'
import { changeColumn, copyColumnBefore, setMark } from '#practice/grid-edit'
import { placeOf } from '#practice/grid-mark'
import { shapesText } from '#practice/shape-text'
import { withRoundMore } from '#ui/entry/add-columns'
import { type Brush, markAfterTap } from '#ui/entry/brush'
import { practiceMarkLook } from '#ui/entry/mark-look'
import { type PracticeDraft, withGrid } from '#ui/entry/practice-draft'
import type { PracticeReading } from '#ui/entry/practice-reading'
import { Stepper } from '#ui/entry/stepper'
import { Button } from '#ui/page/button'

type RoundsPartProps = {
  readonly reading: PracticeReading
  readonly names: ReadonlyMap<string, string>
  readonly brush: Brush
  readonly onEdit: (change: (draft: PracticeDraft) => PracticeDraft) => void
}

/** Round by round: the balls that were played, and who was on which side; the next round keeps the sides and swaps what they do. */
export function RoundsPart({ reading, names, brush, onEdit }: RoundsPartProps) {
  const edit = (change: (grid: PracticeGrid) => PracticeGrid) =>
    onEdit((draft) => withGrid(draft, change(draft.grid)))
  return (
    <ol className="space-y-6">
      {reading.grid.columns.map((column, index) => (
        <li key={column.id} className="border-t-2 border-rule-strong pt-3">
          <RoundCard
            column={column}
            index={index}
            reading={reading}
            names={names}
            brush={brush}
            edit={edit}
          />
        </li>
      ))}
      <li className="flex flex-wrap gap-2">
        <Button type="button" onClick={() => edit(nextRound)}>
          Next round: sides stay, roles swap
        </Button>
      </li>
    </ol>
  )
}

type RoundCardProps = {
  readonly column: GridColumn
  readonly index: number
  readonly reading: PracticeReading
  readonly names: ReadonlyMap<string, string>
  readonly brush: Brush
  readonly edit: (change: (grid: PracticeGrid) => PracticeGrid) => void
}

function RoundCard({ column, index, reading, names, brush, edit }: RoundCardProps) {
  const title = reading.titles[index] ?? ''
  const summary = reading.summaries[index]
  const isEmpty = !reading.grid.rows.some((row) => placeOf(row.marks[index] ?? ''))
  return (
    <section aria-label={title} className="space-y-2">
      <div className="flex flex-wrap items-end gap-x-6 gap-y-2">
        <h3 className="font-semibold">
          {title} <span className="font-normal text-soft">{shapesText(summary?.shapes ?? [])}</span>
        </h3>
        <Stepper
          label="Balls"
          value={column.turnCount}
          least={1}
          most={gridLimits.turnCount}
          onChange={(turnCount) => edit((own) => changeColumn(own, index, { turnCount }))}
        />
        {index > 0 && isEmpty ? (
          <Button
            type="button"
            weight="plain"
            onClick={() => edit((own) => copyColumnBefore(own, { column: index, swap: true }))}
          >
            Sides stay, roles swap
          </Button>
        ) : null}
      </div>
      <ul className="grid grid-cols-2 gap-1 sm:grid-cols-3 lg:grid-cols-5">
        {reading.grid.rows.map((row, rowIndex) => {
          const mark = row.marks[index] ?? ''
          const look = practiceMarkLook(mark)
          const isThere = reading.there[index]?.has(row.playerId) ?? false
          const name = names.get(row.playerId) || 'Guest'
          return (
            <li key={row.playerId}>
              <button
                type="button"
                disabled={!isThere}
                aria-label={`${name}, ${title}: ${isThere ? look.word : 'not there'}`}
                onClick={() =>
                  edit((own) => setMark(own, { row: rowIndex, column: index }, markAfterTap(mark, brush)))
                }
                className={`flex h-12 w-full cursor-pointer items-center gap-2 border border-rule-strong px-2 text-left disabled:cursor-default disabled:bg-band disabled:text-soft ${look.look}`}
              >
                <span className="w-6 shrink-0 text-center">{isThere ? look.text || '·' : '–'}</span>
                <span className="truncate font-normal text-ink">{name}</span>
              </button>
            </li>
          )
        })}
      </ul>
    </section>
  )
}

/** One more round, the sides kept and attack and defence swapped. */
function nextRound(grid: PracticeGrid): PracticeGrid {
  return copyColumnBefore(withRoundMore(grid), { column: grid.columns.length, swap: true })
}
