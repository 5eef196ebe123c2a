'use client'

import { isHeld, type LineUpDraft } from '#lineup/draft/line-up-draft'
import { totalsOfLineUp } from '#lineup/draft/line-up-totals'
import type { LineUp } from '#lineup/line-up'
import { sayClock } from '#lineup/say-clock'
import { lineMarkOf } from '#match/line-mark'
import type { Line } from '#match/match'
import type { CellPlace } from '#practice/grid'
import { matchMarkLook } from '#ui/entry/mark-look'
import { wholeMinutes } from '#ui/figures/minutes'
import type { NameOf } from '#ui/line-up/line-up-types'
import { periodWords } from '#ui/line-up/period-words'
import { PlaceButton, type PlaceButtonProps } from '#ui/planning/place-button'
import { PlayerHead, PlayersHead } from '#ui/planning/player-head'
import { useGridFocus } from '#ui/planning/use-grid-focus'

const cellId = ({ row, column }: CellPlace) => `spell-${row}-${column}`

/** Players × the times between changes: letters, patterns and colours say the line; a small mark who comes on or goes off. */
export function LineUpGrid({
  draft,
  made,
  nameOf,
  chosen,
  onTap,
}: {
  readonly draft: LineUpDraft
  readonly made: LineUp
  readonly nameOf: NameOf
  /** Player and window that were tapped first; null: none. */
  readonly chosen: CellPlace | null
  readonly onTap: (place: CellPlace) => void
}) {
  const { problem, request } = draft
  const { windows, players } = problem
  const totals = totalsOfLineUp(problem, made.plan)
  const size = { rows: players.length, columns: windows.length }
  const isFirst = (column: number) => windows[column]?.period !== windows[column - 1]?.period
  const focusOf = useGridFocus(size, cellId)
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <section className="overflow-x-auto" tabIndex={0} aria-label="The line-up, time by time">
      <table className="figures border-separate border-spacing-0">
        <caption className="sr-only">
          The line-up: players in rows, the times between changes in columns
        </caption>
        <thead>
          <tr>
            <td className="sticky left-0 z-[1] bg-leaf" />
            {periodsOf(windows).map(({ period, count }) => (
              <th
                key={period}
                scope="colgroup"
                colSpan={count}
                className="border-l-2 border-rule-strong px-1.5 text-left text-sm font-semibold"
              >
                {periodWords(request.format, period)}
              </th>
            ))}
            <td />
          </tr>
          <tr>
            <PlayersHead />
            {windows.map(({ start }, column) => (
              <th
                key={start}
                scope="col"
                className={`min-w-11 px-1 text-left text-sm font-medium text-soft ${isFirst(column) ? 'border-l-2 border-rule-strong' : ''}`}
              >
                {sayClock(start - (periodStart(windows, column) ?? 0))}
              </th>
            ))}
            <th
              scope="col"
              className="border-l-2 border-rule-strong px-2 text-right text-sm font-medium text-soft"
            >
              min
            </th>
          </tr>
        </thead>
        <tbody>
          {players.map((player, row) => (
            <tr key={player.id}>
              <PlayerHead name={nameOf(player.id)} />
              {windows.map(({ start }, column) => {
                const place = { row, column }
                const line = made.plan[row]?.[column] ?? null
                const before = isFirst(column) ? line : (made.plan[row]?.[column - 1] ?? null)
                return (
                  <td
                    key={start}
                    className={`p-0.5 ${isFirst(column) ? 'border-l-2 border-rule-strong' : ''}`}
                  >
                    <PlaceButton
                      {...focusOf(place)}
                      look={lookOf(line, player.isThere[column] ?? false)}
                      isPale={line === null}
                      isThere={player.isThere[column] ?? false}
                      change={
                        line !== null && before === null
                          ? 'on'
                          : line === null && before !== null
                            ? 'off'
                            : null
                      }
                      isHeld={isHeld(draft, { player: row, window: column })}
                      heldWord="held"
                      label={`${nameOf(player.id)}, ${periodWords(request.format, windows[column]?.period ?? 0)}, from ${sayClock(start - (periodStart(windows, column) ?? 0))}`}
                      isChosen={chosen?.row === row && chosen.column === column}
                      isDimmed={chosen !== null && chosen.column !== column}
                      onTap={() => onTap(place)}
                    />
                  </td>
                )
              })}
              <td className="border-l-2 border-rule-strong px-2 text-right font-semibold">
                {wholeMinutes(totals[row]?.playSeconds ?? 0)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

function lookOf(line: Line | null, isThere: boolean): PlaceButtonProps['look'] {
  if (!isThere) return { text: '–', word: 'not there', look: '' }
  return line === null ? { text: '', word: 'off', look: 'text-soft' } : matchMarkLook(lineMarkOf(line))
}

type Windows = LineUpDraft['problem']['windows']

function periodStart(windows: Windows, column: number): number | undefined {
  return windows.find(({ period }) => period === windows[column]?.period)?.start
}

function periodsOf(windows: Windows): readonly { readonly period: number; readonly count: number }[] {
  const periods = [...new Set(windows.map(({ period }) => period))]
  return periods.map((period) => ({
    period,
    count: windows.filter((window) => window.period === period).length,
  }))
}
