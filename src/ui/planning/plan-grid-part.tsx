'use client'

import { useMemo } from 'react'
import { type GridCell, gridOfPlan } from '#planning/plan-grid'
import type { PlanRequest } from '#planning/practice-plan'
import type { CellPlace } from '#practice/grid'
import { markOf } from '#practice/grid-mark'
import type { RotationPlan } from '#rotation/plan'
import { practiceMarkLook } from '#ui/entry/mark-look'
import { PlaceButton, type PlaceButtonProps } from '#ui/planning/place-button'
import type { NameOf } from '#ui/planning/planning-types'
import { PlayerHead, PlayersHead } from '#ui/planning/player-head'
import { useGridFocus } from '#ui/planning/use-grid-focus'

type PlanGridPartProps = {
  readonly request: PlanRequest
  readonly plan: RotationPlan
  readonly nameOf: NameOf
  /** Player and turn that were tapped first; null: none. */
  readonly chosen: CellPlace | null
  readonly onTap: (place: CellPlace) => void
}

const cellId = ({ row, column }: CellPlace) => `place-${row}-${column}`

/** Children × turns: letters, patterns and colours say the role, a number the area, a small mark who comes on or goes off. */
export function PlanGridPart({ request, plan, nameOf, chosen, onTap }: PlanGridPartProps) {
  const { rounds } = request.design
  const grid = useMemo(
    () =>
      gridOfPlan(plan, {
        rounds,
        playerIds: request.players.map(({ playerId }) => playerId),
        locks: request.locks,
      }),
    [plan, rounds, request.players, request.locks],
  )
  const size = { rows: grid.rows.length, columns: plan.length }
  const firsts = new Set(grid.rounds.map(({ from }) => from))
  const focusOf = useGridFocus(size, cellId)
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <section className="overflow-x-auto" tabIndex={0} aria-label="The plan, turn by turn">
      <table className="figures border-separate border-spacing-0">
        <caption className="sr-only">The plan: children in rows, turns in columns</caption>
        <thead>
          <tr>
            <td className="sticky left-0 z-[1] bg-leaf" />
            {grid.rounds.map(({ round, from, to }) => (
              <th
                key={from}
                scope="colgroup"
                colSpan={to - from}
                className="border-l-2 border-rule-strong px-1.5 text-left align-bottom text-sm font-semibold"
              >
                <span className="line-clamp-2">
                  {round + 1}. {rounds[round]?.title}
                </span>
              </th>
            ))}
          </tr>
          <tr>
            <PlayersHead />
            {plan.map((_, turn) => (
              <th
                // biome-ignore lint/suspicious/noArrayIndexKey: a turn is its number
                key={turn}
                scope="col"
                className={`min-w-11 text-center text-sm font-medium text-soft ${firsts.has(turn) ? 'border-l-2 border-rule-strong' : ''}`}
              >
                {turn + 1}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {grid.rows.map((row, rowIndex) => (
            <tr key={row.playerId}>
              <PlayerHead name={nameOf(row.playerId)} />
              {row.cells.map((cell, column) => {
                const place = { row: rowIndex, column }
                const isChosen = chosen?.row === rowIndex && chosen.column === column
                return (
                  <td
                    // biome-ignore lint/suspicious/noArrayIndexKey: a turn is its number
                    key={column}
                    className={`p-0.5 ${firsts.has(column) ? 'border-l-2 border-rule-strong' : ''}`}
                  >
                    <PlaceButton
                      {...focusOf(place)}
                      look={lookOf(cell)}
                      isThere={cell.role !== 'away'}
                      change={cell.isOn ? 'on' : cell.isOff ? 'off' : null}
                      isHeld={cell.isLocked}
                      heldWord="held fast"
                      label={`${nameOf(row.playerId)}, turn ${column + 1}`}
                      isChosen={isChosen}
                      isDimmed={chosen !== null && chosen.column !== column}
                      onTap={() => onTap(place)}
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

function lookOf(cell: GridCell): PlaceButtonProps['look'] {
  if (cell.role === 'away') return { text: '–', word: 'not there', look: '' }
  if (cell.role === 'rest') return practiceMarkLook('W')
  return practiceMarkLook(markOf({ role: cell.role, area: cell.area }))
}
