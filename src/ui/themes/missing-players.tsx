import type { MissingOfPlayers, PlayerMissing } from '#ahead/missing/missing-of-players'
import { minutesText } from '#ui/figures/minutes'
import { Details } from '#ui/page/details'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { Table } from '#ui/page/table'
import { paths } from '#ui/paths'
import { attendanceWords } from '#ui/themes/missing-words'

type MissingPlayersProps = MissingOfPlayers & {
  readonly squadId: string
  readonly themes: readonly { readonly themeId: string; readonly name: string }[]
  readonly names: readonly { readonly id: string; readonly name: string }[]
}

/** Theme by theme, folded away: what each player had of it, and how the term is likely to end. By name. */
export function MissingPlayers({ squadId, themes, names, rows, method }: MissingPlayersProps) {
  if (names.length === 0) return null
  return (
    <section aria-labelledby="missing-players">
      <SectionTitle
        id="missing-players"
        note={
          <>
            What each player had of a theme, what may be expected by the end, and what the programme wishes
            for by then. Even share: of what was played with them there. {attendanceWords[method]}
          </>
        }
      >
        Theme by theme
      </SectionTitle>
      {themes.map(({ themeId, name }) => (
        <Details key={themeId} summary={name}>
          <Table
            caption={`${name}, by player`}
            hideCaption
            head={[
              { key: 'player', label: 'Player' },
              { key: 'had', label: 'Had', isFigure: true },
              { key: 'end', label: 'By the end', isFigure: true },
              { key: 'wished', label: 'Wished', isFigure: true },
              { key: 'even', label: 'Even share', isFigure: true },
              { key: 'there', label: 'There', isFigure: true },
            ]}
          >
            {names.map((player) => (
              <tr key={player.id}>
                <th scope="row">
                  <PageLink href={paths.player(squadId, { playerId: player.id })}>{player.name}</PageLink>
                </th>
                <Cells row={rows.find((row) => row.playerId === player.id && row.themeId === themeId)} />
              </tr>
            ))}
          </Table>
        </Details>
      ))}
    </section>
  )
}

function Cells({ row }: { readonly row: PlayerMissing | undefined }) {
  if (!row) return <td colSpan={5}>–</td>
  return (
    <>
      <td className="figure">{minutesText(row.seconds)}</td>
      <td className="figure">{minutesText(row.endSeconds)}</td>
      <td className="figure">{minutesText(row.endWishedSeconds)}</td>
      <td className="figure">{minutesText(row.evenSeconds)}</td>
      <td className="figure">
        {row.attended} of {row.offered}
      </td>
    </>
  )
}
