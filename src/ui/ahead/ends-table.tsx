import type { AheadProblem } from '#ahead/problem'
import type { ColumnSeconds, RotationColumn } from '#rotation/problem'
import type { NameOfPlace } from '#ui/ahead/ahead-types'
import { columnName } from '#ui/ahead/column-names'
import { endsText, endText } from '#ui/ahead/end-text'
import { balanceSpanSeconds } from '#ui/figures/balance-geometry'
import { Table } from '#ui/page/table'
import { BeforeAfterBar } from '#ui/planning/before-after-bar'

export type EndsTableProps = {
  readonly problem: AheadProblem
  readonly before: readonly ColumnSeconds[]
  readonly after: readonly ColumnSeconds[]
  readonly nameOf: NameOfPlace
  /** What ring and dot stand for: "now" and "at the end". */
  readonly was: string
  readonly is: string
  readonly caption: string
  readonly columns: readonly RotationColumn[]
}

/** Bars with a ring where a player stands before and a dot where it stands after, all on one scale. */
export function EndsTable(props: EndsTableProps) {
  const { problem, before, after, nameOf, was, is, caption, columns } = props
  const balanceOf = (player: number, column: RotationColumn, gaps: readonly ColumnSeconds[]) => ({
    seconds: gaps[player]?.[column] ?? 0,
    dueSeconds: 0,
    toleranceSeconds: problem.players[player]?.tolerance[column] ?? 0,
  })
  const spanSeconds = balanceSpanSeconds(
    problem.players.flatMap((_, player) =>
      columns.flatMap((column) => [balanceOf(player, column, before), balanceOf(player, column, after)]),
    ),
  )
  return (
    <Table
      caption={`${caption}. Ring: ${was}. Dot: ${is}.`}
      head={[
        { key: 'player', label: 'Player' },
        ...columns.map((column) => ({ key: column, label: columnName(column) })),
      ]}
    >
      {problem.players.map(({ id, keeps }, player) => (
        <tr key={id}>
          <th scope="row">{nameOf(player)}</th>
          {columns.map((column) => {
            const [from, to] = [balanceOf(player, column, before), balanceOf(player, column, after)]
            return (
              <td key={column}>
                {column === 'keep' && !keeps && from.seconds === 0 && to.seconds === 0 ? (
                  <span className="text-soft">not in goal</span>
                ) : (
                  <>
                    <BeforeAfterBar
                      label={`${columnName(column)}: ${was} ${endText(from.seconds)}, ${is} ${endText(to.seconds)}`}
                      before={from}
                      after={to}
                      spanSeconds={spanSeconds}
                    />
                    <span aria-hidden="true" className="figures block text-xs text-soft">
                      {endsText({ from: from.seconds, to: to.seconds })}
                    </span>
                  </>
                )}
              </td>
            )
          })}
        </tr>
      ))}
    </Table>
  )
}
