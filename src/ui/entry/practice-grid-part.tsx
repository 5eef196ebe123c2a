'use client'

import { useState } from 'react'
import type { CellPlace, PracticeGrid } from '#practice/grid'
import { markAt } from '#practice/grid'
import { changeColumn, copyColumnBefore, removeColumn, setMark, splitColumn } from '#practice/grid-edit'
import { parseMark, passMark, placeOf } from '#practice/grid-mark'
import { pasteBlock, pasteSentence } from '#practice/grid-paste'
import { AddColumns } from '#ui/entry/add-columns'
import { type Brush, markAfterTap } from '#ui/entry/brush'
import { ColumnHead } from '#ui/entry/column-head'
import { ColumnSettings } from '#ui/entry/column-settings'
import { MarkGrid } from '#ui/entry/mark-grid'
import { practiceMarkLook } from '#ui/entry/mark-look'
import { type PracticeDraft, withGrid } from '#ui/entry/practice-draft'
import type { PracticeReading } from '#ui/entry/practice-reading'
import type { ThemeName } from '#ui/entry/theme-select'
import { Problems } from '#ui/page/problems'

type PracticeGridPartProps = {
  readonly reading: PracticeReading
  readonly names: ReadonlyMap<string, string>
  readonly themes: readonly ThemeName[]
  readonly brush: Brush
  /** False: the plan, which is changed by its exceptions. */
  readonly isOpen: boolean
  /** Only this column is shown; null: all. */
  readonly onlyId: string | null
  readonly onEdit: (change: (draft: PracticeDraft) => PracticeDraft) => void
}

/** The quick grid: players × rounds, or × turns once a round is opened. */
export function PracticeGridPart({
  reading,
  names,
  themes,
  brush,
  isOpen,
  onlyId,
  onEdit,
}: PracticeGridPartProps) {
  const { grid } = reading
  const [openId, setOpenId] = useState<string | null>(null)
  const [pasteProblems, setPasteProblems] = useState<readonly string[]>([])
  const edit = (change: (grid: PracticeGrid) => PracticeGrid) =>
    onEdit((draft) => withGrid(draft, change(draft.grid)))
  const openAt = grid.columns.findIndex((column) => column.id === openId)
  const openColumn = grid.columns[openAt]

  // Places in what is shown are places in the whole grid but when a single turn is corrected.
  const shown = grid.columns.flatMap(({ id }, index) => (onlyId === null || id === onlyId ? [index] : []))
  const inGrid = ({ row, column }: CellPlace): CellPlace => ({ row, column: shown[column] ?? -1 })
  const isThere = ({ row, column }: CellPlace) =>
    reading.there[column]?.has(grid.rows[row]?.playerId ?? '') ?? false

  const handleKey = (shownPlace: CellPlace, key: string) => {
    const place = inGrid(shownPlace)
    if (key.toLowerCase() === 's') {
      edit((own) => copyColumnBefore(own, { column: place.column, swap: true }))
      return { moves: false }
    }
    const typed = markOfKey(markAt(grid, place), key)
    if (typed === null || !isThere(place)) return null
    edit((own) => setMark(own, place, typed))
    return { moves: /^[adkw]$/i.test(key) }
  }
  const paste = (shownPlace: CellPlace, text: string) => {
    const pasted = pasteBlock(grid, { text, at: inGrid(shownPlace), names })
    setPasteProblems(pasted.ok ? [] : pasted.reasons.map(pasteSentence))
    if (pasted.ok) edit(() => pasted.value)
  }
  const headOf = (index: number) => {
    const column = grid.columns[index]
    if (!column) return null
    return (
      <ColumnHead
        column={column}
        title={reading.titles[index] ?? ''}
        start={reading.starts[index] ?? 0}
        summary={reading.summaries[index] ?? noSummary}
        hasProblem={reading.wrongColumns.has(index)}
        isOpen={column.id === openId}
        canSwap={index > 0 && isOpen && onlyId === null}
        onOpen={() => setOpenId(column.id === openId || !isOpen ? null : column.id)}
        onSwap={() => edit((own) => copyColumnBefore(own, { column: index, swap: true }))}
      />
    )
  }
  const tap = (place: CellPlace) =>
    edit((own) => setMark(own, place, markAfterTap(markAt(own, place), brush)))
  return (
    <div className="space-y-3">
      <MarkGrid
        caption="Who did what, by round"
        columns={shown.map((index) => ({
          id: grid.columns[index]?.id ?? '',
          label: reading.titles[index] ?? '',
          head: headOf(index),
        }))}
        rows={grid.rows.map((row, rowIndex) => ({
          id: row.playerId,
          name: names.get(row.playerId) || 'Guest',
          cells: shown.map((column) => ({
            look: practiceMarkLook(row.marks[column] ?? ''),
            isThere: isThere({ row: rowIndex, column }),
          })),
        }))}
        onTap={(place) => isOpen && tap(inGrid(place))}
        onKey={isOpen ? handleKey : () => null}
        onPaste={isOpen ? paste : undefined}
      />
      <Problems
        title="The block was not pasted"
        problems={pasteProblems.map((message) => ({ path: '', message }))}
      />
      {isOpen && onlyId === null ? <AddColumns edit={edit} /> : null}
      {openColumn && isOpen ? (
        <ColumnSettings
          key={openColumn.id}
          column={openColumn}
          title={reading.titles[openAt] ?? ''}
          themes={themes}
          isFirst={openAt === 0}
          onChange={(change) => edit((own) => changeColumn(own, openAt, change))}
          onCopy={() => edit((own) => copyColumnBefore(own, { column: openAt, swap: false }))}
          onSplit={() => edit((own) => splitColumn(own, openAt))}
          onRemove={() => edit((own) => removeColumn(own, openAt))}
        />
      ) : null}
    </div>
  )
}

const noSummary = { shapes: [], otherTurns: 0, waiting: 0, turnCount: 0 }

/** The mark a key makes of a cell's: a letter sets it, a digit its area, P passed; null for keys that mean nothing. */
export function markOfKey(mark: ReturnType<typeof markAt>, key: string): ReturnType<typeof markAt> | null {
  if (key === 'Backspace' || key === 'Delete' || key === ' ') return ''
  if (/^[adkw]$/i.test(key)) return parseMark(key)
  if (/^p$/i.test(key)) return passMark(mark)
  const place = placeOf(mark)
  return /^[1-9]$/.test(key) && place ? parseMark(`${mark.charAt(0)}${key}`) : null
}
