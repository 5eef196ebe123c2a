'use client'

import { type DragEvent, useId, useState } from 'react'
import { chosenOffer } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { firmPractices } from '#ahead/term-plan'
import type { AheadTerm } from '#ui/ahead/ahead-types'
import { BoardCell } from '#ui/ahead/board-cell'
import type { ByHand } from '#ui/ahead/use-by-hand'
import { formatDay } from '#ui/format-day'
import { useGridFocus } from '#ui/planning/use-grid-focus'

type WeeksBoardProps = {
  readonly term: AheadTerm
  readonly problem: AheadProblem
  readonly choices: readonly number[]
  readonly byHand: ByHand
}

/**
 * The weeks as a strip, the themes as rows. A theme is dragged to another practice, or another theme is tapped; by
 * keyboard the arrows move through the cells, Enter takes a theme, Shift with an arrow moves one to the next practice.
 */
export function WeeksBoard({ term, problem, choices, byHand }: WeeksBoardProps) {
  const id = useId()
  const [dragged, setDragged] = useState<number | null>(null)
  const rows = term.lines
    .map((line) => ({ ...line, theme: problem.themes.findIndex((theme) => theme.id === line.id) }))
    .filter(({ theme }) => problem.practices.some(({ offers }) => offers.some((own) => own.theme === theme)))
  const size = { rows: rows.length, columns: problem.practices.length }
  const cellOf = useGridFocus(size, ({ row, column }) => `${id}-${row}-${column}`)
  const drop = (practice: number, theme: number) => (event: DragEvent) => {
    event.preventDefault()
    if (dragged === null) return
    setDragged(null)
    if (dragged === practice) byHand.choose(practice, theme)
    else byHand.exchange(dragged, practice)
  }
  return (
    <section
      className="overflow-x-auto"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
      tabIndex={0}
      aria-label="Weeks and themes"
    >
      <table className="border-collapse text-sm">
        <caption className="sr-only">
          Themes by practices to come, {term.name}. Arrow keys move, Enter chooses a theme, Shift with an
          arrow moves a theme to the practice beside.
        </caption>
        <thead>
          <tr>
            <td />
            {weeksOf(problem).map(({ week, practices }) => (
              <th
                key={week}
                scope="colgroup"
                colSpan={practices}
                className="border-l border-rule px-2 text-left font-medium text-soft"
              >
                Week {week}
              </th>
            ))}
          </tr>
          <tr>
            <td />
            {problem.practices.map(({ id: own, day, held }, practice) => (
              <th
                key={own}
                scope="col"
                className={`min-w-16 px-2 pb-1 text-left font-semibold ${practice < firmPractices ? 'border-b-2 border-ink' : 'border-b-2 border-dashed border-rule-strong'}`}
              >
                {formatDay(day, 'short')}
                <span className="block font-normal text-soft">
                  {held ? 'held' : practice < firmPractices ? 'firm' : 'sketch'}
                </span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id: own, name, depth, theme }, row) => (
            <tr key={own} className="border-b border-rule">
              <th scope="row" className="sticky left-0 bg-leaf py-1 pr-3 text-left font-normal">
                <span className="block max-w-28 sm:max-w-56" style={{ paddingLeft: `${depth * 0.75}rem` }}>
                  {name}
                </span>
              </th>
              {problem.practices.map((practice, column) => {
                const offer = chosenOffer(problem, choices, column)
                return (
                  <td
                    key={practice.id}
                    className="p-0.5"
                    onDragOver={(event) => event.preventDefault()}
                    onDrop={drop(column, theme)}
                  >
                    <BoardCell
                      {...cellOf({ row, column })}
                      words={`${name}, ${formatDay(practice.day)}`}
                      state={
                        offer?.theme === theme
                          ? 'chosen'
                          : practice.offers.some((one) => one.theme === theme)
                            ? 'free'
                            : 'closed'
                      }
                      isFirm={column < firmPractices}
                      isHeld={practice.held !== null}
                      onTake={() => byHand.choose(column, theme)}
                      onStep={(step) => byHand.exchange(column, column + step)}
                      onDrag={(isOn) => setDragged(isOn ? column : null)}
                    />
                  </td>
                )
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

function weeksOf({
  practices,
}: AheadProblem): readonly { readonly week: number; readonly practices: number }[] {
  const weeks = [...new Set(practices.map(({ week }) => week))]
  return weeks.map((week) => ({ week, practices: practices.filter((own) => own.week === week).length }))
}
