'use client'

import { useState } from 'react'
import type { CellPlace, PracticeGrid } from '#practice/grid'
import { markAt } from '#practice/grid'
import { freeGameColumn, plainColumn } from '#practice/grid-columns'
import {
  changeColumn,
  copyColumnBefore,
  insertColumn,
  removeColumn,
  setMark,
  splitColumn,
} from '#practice/grid-edit'
import { parseMark, passMark, placeOf } from '#practice/grid-mark'
import { pasteBlock, pasteSentence } from '#practice/grid-paste'
import { type Brush, markAfterTap } from '#ui/entry/brush'
import { ColumnHead } from '#ui/entry/column-head'
import { ColumnSettings, type ThemeName } from '#ui/entry/column-settings'
import { MarkGrid } from '#ui/entry/mark-grid'
import { practiceMarkLook } from '#ui/entry/mark-look'
import { nextColumnNumber, type PracticeDraft, withGrid } from '#ui/entry/practice-draft'
import type { PracticeReading } from '#ui/entry/practice-reading'
import { Button } from '#ui/page/button'
import { Problems } from '#ui/page/problems'

type PracticeGridPartProps = {
  readonly reading: PracticeReading
  readonly names: ReadonlyMap<string, string>
  readonly themes: readonly ThemeName[]
  readonly brush: Brush
  /** False: the plan, which is changed by its exceptions. */
  readonly isOpen: boolean
  readonly onEdit: (change: (draft: PracticeDraft) => PracticeDraft) => void
}

/** The quick grid: players × rounds, or × turns once a round is opened. */
export function PracticeGridPart({ reading, names, themes, brush, isOpen, onEdit }: PracticeGridPartProps) {
  const { grid } = reading
  const [openId, setOpenId] = useState<string | null>(null)
  const [pasteProblems, setPasteProblems] = useState<readonly string[]>([])
  const edit = (change: (grid: PracticeGrid) => PracticeGrid) =>
    onEdit((draft) => withGrid(draft, change(draft.grid)))
  const openAt = grid.columns.findIndex((column) => column.id === openId)
  const openColumn = grid.columns[openAt]

  const handleKey = (place: CellPlace, key: string) => {
    const mark = markAt(grid, place)
    const typed = markOfKey(mark, key)
    if (key.toLowerCase() === 's') {
      edit((own) => copyColumnBefore(own, { column: place.column, swap: true }))
      return { moves: false }
    }
    if (typed === null || !isThere(place)) return null
    edit((own) => setMark(own, place, typed))
    return { moves: /^[adkw]$/i.test(key) }
  }
  const isThere = ({ row, column }: CellPlace) =>
    reading.there[column]?.has(grid.rows[row]?.playerId ?? '') ?? false
  const paste = (at: CellPlace, text: string) => {
    const pasted = pasteBlock(grid, { text, at, names })
    setPasteProblems(pasted.ok ? [] : pasted.reasons.map(pasteSentence))
    if (pasted.ok) edit(() => pasted.value)
  }
  return (
    <div className="space-y-3">
      <MarkGrid
        caption="Who did what, by round"
        columns={grid.columns.map((column, index) => ({
          id: column.id,
          label: reading.titles[index] ?? '',
          head: (
            <ColumnHead
              column={column}
              title={reading.titles[index] ?? ''}
              start={reading.starts[index] ?? 0}
              summary={reading.summaries[index] ?? noSummary}
              hasProblem={reading.wrongColumns.has(index)}
              isOpen={column.id === openId}
              isFirst={index === 0 || !isOpen}
              onOpen={() => setOpenId(column.id === openId || !isOpen ? null : column.id)}
              onSwap={() => edit((own) => copyColumnBefore(own, { column: index, swap: true }))}
            />
          ),
        }))}
        rows={grid.rows.map((row, rowIndex) => ({
          id: row.playerId,
          name: names.get(row.playerId) || 'Guest',
          cells: grid.columns.map((_, column) => ({
            look: practiceMarkLook(row.marks[column] ?? ''),
            isThere: isThere({ row: rowIndex, column }),
          })),
        }))}
        onTap={(place) =>
          isOpen && edit((own) => setMark(own, place, markAfterTap(markAt(own, place), brush)))
        }
        onKey={isOpen ? handleKey : () => null}
        onPaste={isOpen ? paste : undefined}
      />
      <Problems
        title="The block was not pasted"
        problems={pasteProblems.map((message) => ({ path: '', message }))}
      />
      {isOpen ? (
        <p className="flex flex-wrap gap-2">
          <Button
            type="button"
            weight="plain"
            onClick={() =>
              edit((own) => {
                const last = own.columns.findLast((column) => !column.isFreeGame)
                const number = nextColumnNumber(own)
                const added = {
                  ...(last ?? plainColumn(number, null)),
                  id: `c${number}`,
                  title: `Round ${own.columns.length + 1}`,
                  startsAt: null,
                }
                return insertColumn(own, own.columns.length, added)
              })
            }
          >
            + round
          </Button>
          <Button
            type="button"
            weight="plain"
            onClick={() =>
              edit((own) => insertColumn(own, own.columns.length, freeGameColumn(nextColumnNumber(own), 10)))
            }
          >
            + free game
          </Button>
        </p>
      ) : null}
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
