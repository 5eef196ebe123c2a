'use client'

import { sessionMinute } from '#common/session-minute'
import type { ColumnSummary } from '#practice/column-summary'
import type { AreaShape } from '#practice/design'
import type { GridColumn } from '#practice/grid'
import { shapesText } from '#practice/shape-text'
import { summaryWords } from '#ui/entry/summary-words'

type ColumnHeadProps = {
  readonly column: GridColumn
  readonly title: string
  readonly start: number
  readonly summary: ColumnSummary
  readonly hasProblem: boolean
  readonly isOpen: boolean
  /** There is a round before it to be copied. */
  readonly canSwap: boolean
  readonly onOpen: () => void
  readonly onSwap: () => void
}

/** The head of a round: its numbers as they come out at once, and the round before copied with sides swapped in one tap. */
export function ColumnHead({
  column,
  title,
  start,
  summary,
  hasProblem,
  isOpen,
  canSwap,
  onOpen,
  onSwap,
}: ColumnHeadProps) {
  const shapes = shapesText(summary.shapes)
  const planned = shapes ? shapesText(plannedShapes(column)) : ''
  return (
    <div className="text-center text-sm leading-tight">
      <button
        type="button"
        aria-expanded={isOpen}
        aria-label={`${title}: ${summaryWords(summary)}${planned && planned !== shapes ? `, planned ${planned}` : ''}. Settings`}
        onClick={onOpen}
        className={`block w-full cursor-pointer border-2 px-0.5 py-1 ${isOpen ? 'border-accent' : 'border-transparent'}`}
      >
        <span className="block mx-auto max-w-14 truncate sm:max-w-24 text-xs text-soft">{title}</span>
        <span className="block text-xs text-soft">
          {column.isFreeGame
            ? `${column.turnSeconds / 60} min`
            : `${column.turnCount} × ${column.turnSeconds} s`}
        </span>
        <span className="block text-xs text-soft">from {sessionMinute(start)}′</span>
        <span className={`mx-auto block max-w-16 font-semibold sm:max-w-28 ${hasProblem ? 'text-warn' : ''}`}>
          {hasProblem ? '! ' : ''}
          {shapes || '·'}
        </span>
        {planned && planned !== shapes ? <span className="block text-xs text-warn">of {planned}</span> : null}
        <span className="block text-xs text-soft">{shapes ? `${summary.waiting} wait` : ' '}</span>
        {summary.otherTurns > 0 ? (
          <span className="block text-xs text-soft">{summary.otherTurns} differ</span>
        ) : null}
        {column.atATime && shapes ? <span className="block text-xs text-soft">in turn</span> : null}
      </button>
      {canSwap ? (
        <button
          type="button"
          onClick={onSwap}
          aria-label={`${title}: as the one before, sides swapped`}
          title="As the one before, sides swapped"
          className="tap w-full cursor-pointer border border-rule-strong bg-leaf text-lg text-accent"
        >
          ⇄
        </button>
      ) : (
        <span className="block h-11" />
      )}
    </div>
  )
}

/** The numbers a round is meant to have, where somebody said so. */
function plannedShapes({ atATime, areas }: GridColumn): readonly AreaShape[] {
  if (!atATime) return []
  return Array.from({ length: areas }, (_, area) => atATime[area] ?? atATime.at(-1)).flatMap(
    (shape) => shape ?? [],
  )
}
