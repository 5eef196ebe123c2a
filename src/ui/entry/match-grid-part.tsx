'use client'

import { useState } from 'react'
import type { Seconds } from '#common/time'
import {
  addChange,
  copySpanBefore,
  type LineGrid,
  removeChange,
  setLine,
  spansOfGrid,
} from '#match/line-grid'
import { parseLineMark } from '#match/line-mark'
import type { CellPlace } from '#practice/grid'
import { type LineBrush, lineAfterTap } from '#ui/entry/line-brush'
import { MarkGrid } from '#ui/entry/mark-grid'
import { matchMarkLook } from '#ui/entry/mark-look'
import { type MatchDraft, numbersOfSpan, thereBySpan, withLineGrid } from '#ui/entry/match-draft'
import { MinuteField } from '#ui/entry/minute-field'
import { SpanHead } from '#ui/entry/span-head'
import { Button } from '#ui/page/button'

type MatchGridPartProps = {
  readonly draft: MatchDraft
  readonly names: ReadonlyMap<string, string>
  readonly brush: LineBrush
  readonly onEdit: (change: (draft: MatchDraft) => MatchDraft) => void
}

/** Players × the stretches between changes. */
export function MatchGridPart({ draft, names, brush, onEdit }: MatchGridPartProps) {
  const { grid } = draft
  const [minute, setMinute] = useState<Seconds | null>(null)
  const [fieldKey, setFieldKey] = useState(0)
  const spans = spansOfGrid(grid)
  const there = thereBySpan(draft)
  const edit = (change: (grid: LineGrid) => LineGrid) => onEdit((own) => withLineGrid(own, change(own.grid)))
  const isThere = ({ row, column }: CellPlace) => there[column]?.has(grid.rows[row]?.playerId ?? '') ?? false
  const handleKey = (place: CellPlace, key: string) => {
    const mark = key === 'Backspace' || key === 'Delete' ? '' : key === ' ' ? null : parseLineMark(key)
    if (mark === null || !isThere(place)) return null
    edit((own) => setLine(own, { row: place.row, span: place.column }, mark))
    return { moves: mark !== '' }
  }
  const addAt = () => {
    if (minute === null) return
    edit((own) => addChange(own, minute))
    setMinute(null)
    setFieldKey((key) => key + 1)
  }
  return (
    <div className="space-y-3">
      <MarkGrid
        caption="Who played in which line, between changes"
        columns={spans.map((span, index) => ({
          id: `${span.start}`,
          label: `from minute ${span.start / 60}`,
          head: (
            <SpanHead
              span={span}
              numbers={numbersOfSpan(grid, index)}
              isFirst={index === 0}
              canRemove={grid.changes.includes(span.start)}
              onCopy={() => edit((own) => copySpanBefore(own, index))}
              onRemove={() => edit((own) => removeChange(own, index))}
            />
          ),
        }))}
        rows={grid.rows.map((row, rowIndex) => ({
          id: row.playerId,
          name: names.get(row.playerId) || 'Guest',
          cells: spans.map((_, column) => ({
            look: matchMarkLook(row.marks[column] ?? ''),
            isThere: isThere({ row: rowIndex, column }),
          })),
        }))}
        onTap={({ row, column }) =>
          edit((own) =>
            setLine(own, { row, span: column }, lineAfterTap(own.rows[row]?.marks[column] ?? '', brush)),
          )
        }
        onKey={handleKey}
      />
      <div className="flex flex-wrap items-end gap-3">
        <MinuteField key={fieldKey} label="A change at minute" seconds={minute} onChange={setMinute} />
        <Button type="button" weight="plain" disabled={minute === null} onClick={addAt}>
          + change
        </Button>
        <p className="max-w-prose text-sm text-soft">
          The stretch it falls in is cut in two, both with the same places; then mark who changed.
        </p>
      </div>
    </div>
  )
}
