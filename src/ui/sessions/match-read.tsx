import { sessionMinute } from '#common/session-minute'
import { spansOfGrid } from '#match/line-grid'
import type { Period, Spell } from '#match/match'
import { gridOfSpells } from '#match/spells-of-grid'
import { matchMarkLook } from '#ui/entry/mark-look'
import { Table } from '#ui/page/table'

type MatchReadProps = {
  readonly periods: readonly Period[]
  readonly spells: readonly Spell[]
  readonly players: readonly { readonly id: string; readonly name: string }[]
}

/** Who played in which line between changes. */
export function MatchRead({ periods, spells, players }: MatchReadProps) {
  const grid = gridOfSpells(
    { periods, spells },
    players.map(({ id }) => id),
  )
  const spans = spansOfGrid(grid)
  return (
    <Table
      caption="Who played in which line"
      hideCaption
      head={[
        { key: 'player', label: 'Player' },
        ...spans.map((span) => ({
          key: String(span.start),
          label: (
            <span className="block text-center whitespace-nowrap">
              {sessionMinute(span.start)}–{sessionMinute(span.end)}′
            </span>
          ),
        })),
      ]}
    >
      {grid.rows.map((row) => (
        <tr key={row.playerId}>
          <th scope="row">{players.find(({ id }) => id === row.playerId)?.name}</th>
          {spans.map((span, index) => {
            const look = matchMarkLook(row.marks[index] ?? '')
            return (
              <td key={span.start} style={{ textAlign: 'center' }}>
                <span aria-hidden="true" className={`inline-block min-w-8 ${look.look}`}>
                  {look.text}
                </span>
                <span className="sr-only">{look.text ? look.word : 'off'}</span>
              </td>
            )
          })}
        </tr>
      ))}
    </Table>
  )
}
