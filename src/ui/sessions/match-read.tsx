import { sessionMinute } from '#common/session-minute'
import { spansOfGrid } from '#match/line-grid'
import type { Period, Spell } from '#match/match'
import { gridOfSpells } from '#match/spells-of-grid'
import { matchMarkLook } from '#ui/entry/mark-look'
import { Table } from '#ui/page/table'
import { clockWords } from '#ui/pitch/clock-words'

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
  // What was tapped has seconds; "10.4–10.5" would be two names for one minute.
  const isInMinutes = spans.every(({ start, end }) => start % 60 === 0 && end % 60 === 0)
  const at = (second: number) => (isInMinutes ? sessionMinute(second) : clockWords(second))
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
              {at(span.start)}–{at(span.end)}
              {isInMinutes ? '′' : ''}
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
