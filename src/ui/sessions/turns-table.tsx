import { sessionMinute } from '#common/session-minute'
import { gridOfTurns, type WrittenTurn } from '#practice/grid-of-turns'
import { shapesText } from '#practice/shape-text'
import type { RegisterLine } from '#squad/register'
import { practiceMarkLook } from '#ui/entry/mark-look'
import { PageLink } from '#ui/page/page-link'
import { Table } from '#ui/page/table'
import { words } from '#ui/words'

type Named = { readonly id: string; readonly name: string }

type TurnsTableProps = {
  /** In order of time. */
  readonly turns: readonly WrittenTurn[]
  readonly register: readonly RegisterLine[]
  readonly players: readonly Named[]
  readonly themes: readonly Named[]
  /** Where a turn is corrected; null: not here. */
  readonly correctHref: ((eventId: string) => string) | null
}

/** Players × turns: who did what in each, with its numbers. */
export function TurnsTable({ turns, register, players, themes, correctHref }: TurnsTableProps) {
  const grid = gridOfTurns(
    turns,
    players.map(({ id }) => id),
  )
  const themeNames = new Map(themes.map(({ id, name }) => [id, name]))
  const isThere = (playerId: string, start: number, end: number) =>
    register.some(
      (line) => line.playerId === playerId && line.state === 'here' && line.from <= start && end <= line.to,
    )
  return (
    <Table
      caption="Who did what in each turn"
      hideCaption
      head={[
        { key: 'player', label: 'Player' },
        ...turns.map(({ eventId, turn }, index) => ({
          key: eventId,
          label: (
            <span className="block min-w-14 text-center">
              <span className="block max-w-20 truncate">{turn.round ?? `Turn ${index + 1}`}</span>
              <span className="block font-normal">from {sessionMinute(turn.start)}′</span>
              {turn.continuesTurn ? (
                <span className="block max-w-20 font-normal">{words.sameTurn}</span>
              ) : null}
              <span className="block whitespace-nowrap text-ink">
                {shapesText(
                  turn.stations.map(({ attack, defend, keep }) => ({
                    attack: attack.length,
                    defend: defend.length,
                    keep: keep.length,
                  })),
                )}
              </span>
              {turn.chosenBy ? (
                <span className="block font-normal">{words.doing[turn.chosenBy]} side chose</span>
              ) : null}
              <span className="block max-w-20 truncate font-normal">
                {turn.themeId ? (themeNames.get(turn.themeId) ?? '') : ''}
              </span>
              {correctHref ? (
                <PageLink
                  className="tap inline-flex items-center font-normal"
                  href={correctHref(eventId)}
                  aria-label={`Correct turn ${index + 1}`}
                >
                  {words.correct}
                </PageLink>
              ) : null}
            </span>
          ),
        })),
      ]}
    >
      {grid.rows.map((row) => (
        <tr key={row.playerId}>
          <th scope="row">{players.find(({ id }) => id === row.playerId)?.name}</th>
          {turns.map(({ eventId, turn }, index) => {
            const look = practiceMarkLook(row.marks[index] ?? '')
            const there = isThere(row.playerId, turn.start, turn.end)
            return (
              <td key={eventId} style={{ textAlign: 'center' }}>
                <span
                  aria-hidden="true"
                  className={`inline-block min-w-8 ${there ? look.look : 'text-soft'}`}
                >
                  {there ? look.text : '–'}
                </span>
                <span className="sr-only">
                  {there ? (look.text ? look.word : words.doing.rest) : 'not there'}
                </span>
              </td>
            )
          })}
        </tr>
      ))}
    </Table>
  )
}
