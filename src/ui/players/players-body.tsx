import type { Day } from '#common/time'
import type { Squad } from '#squad/squad'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay } from '#ui/format-day'
import { Empty } from '#ui/page/empty'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { Table } from '#ui/page/table'
import { paths } from '#ui/paths'
import { memberText } from '#ui/player/setting-words'
import { NewPlayerForm } from '#ui/players/new-player-form'
import { words } from '#ui/words'

type Named = { readonly id: string; readonly name: string }
type Listed = Named & {
  readonly keeps: boolean
  readonly wantsToKeep: boolean
  readonly days: { readonly firstDay: Day; readonly lastDay: Day | null }
}

type PlayersBodyProps = {
  readonly squad: Squad
  readonly today: Day
  readonly members: readonly Listed[]
  readonly former: readonly Listed[]
  readonly guests: readonly Named[]
  readonly mayChange: boolean
  readonly add: SendForm
}

/** Who belongs to the squad, by name, and who joins it. */
export function PlayersBody({ squad, today, members, former, guests, mayChange, add }: PlayersBodyProps) {
  return (
    <>
      {members.length > 0 ? (
        <section>
          <SectionTitle note="By name. What can be set stands on each player’s page.">Members</SectionTitle>
          <PlayersTable
            caption={`Members of ${squad.name}`}
            players={members}
            squadId={squad.id}
            today={today}
          />
        </section>
      ) : (
        <Empty>Nobody belongs to this squad yet.</Empty>
      )}
      {mayChange ? (
        <section>
          <SectionTitle note="A whole list of players is taken in under Files.">New player</SectionTitle>
          <NewPlayerForm squadId={squad.id} today={today} others={othersOf({ former, guests })} send={add} />
        </section>
      ) : null}
      {former.length > 0 ? (
        <section>
          <SectionTitle>Once members</SectionTitle>
          <PlayersTable caption={`Once of ${squad.name}`} players={former} squadId={squad.id} today={today} />
        </section>
      ) : null}
      {guests.length > 0 ? (
        <section>
          <SectionTitle note="Came along and belong to no days of the squad. Added under the same name, a guest becomes a member.">
            {words.guests}
          </SectionTitle>
          <ul className="list-disc pl-5">
            {guests.map(({ id, name }) => (
              <li key={id}>{name}</li>
            ))}
          </ul>
        </section>
      ) : null}
    </>
  )
}

function othersOf({ former, guests }: Pick<PlayersBodyProps, 'former' | 'guests'>) {
  return [
    ...guests.map(({ id, name }) => ({ id, name, was: 'the guest' })),
    ...former.map(({ id, name, days }) => ({
      id,
      name,
      was: `a member until ${formatDay(days.lastDay ?? days.firstDay)}`,
    })),
  ]
}

type PlayersTableProps = {
  readonly caption: string
  readonly players: readonly Listed[]
  readonly squadId: string
  readonly today: Day
}

function PlayersTable({ caption, players, squadId, today }: PlayersTableProps) {
  return (
    <Table
      caption={caption}
      hideCaption
      head={[
        { key: 'player', label: 'Player' },
        { key: 'member', label: 'Member' },
        { key: 'goal', label: words.role.keep },
      ]}
    >
      {players.map(({ id, name, keeps, wantsToKeep, days }) => (
        <tr key={id}>
          <th scope="row">
            <PageLink href={paths.player(squadId, { playerId: id })}>{name}</PageLink>
          </th>
          <td>{memberText({ ...days, today })}</td>
          <td>{goalText({ keeps, wantsToKeep })}</td>
        </tr>
      ))}
    </Table>
  )
}

function goalText({ keeps, wantsToKeep }: Pick<Listed, 'keeps' | 'wantsToKeep'>): string {
  if (!keeps) return 'asks not to'
  return wantsToKeep ? 'asks to keep' : 'may be put there'
}
