import type { MatchPlan } from '#lineup/match-plan'
import type { Spell } from '#match/match'
import type { PlayerId } from '#squad/player'
import { Details } from '#ui/page/details'
import { Table } from '#ui/page/table'
import { clockWords } from '#ui/pitch/clock-words'

type PlayedAgainstPlanProps = {
  readonly plan: MatchPlan
  readonly spells: readonly Spell[]
  readonly players: readonly { readonly id: PlayerId; readonly name: string }[]
}

type Timed = { readonly playerId: PlayerId; readonly start: number; readonly end: number }

/** Time of play as it was planned and as it came. */
export function PlayedAgainstPlan({ plan, spells, players }: PlayedAgainstPlanProps) {
  const secondsOf = (all: readonly Timed[], id: PlayerId) =>
    all.reduce((sum, { playerId, start, end }) => (playerId === id ? sum + end - start : sum), 0)
  return (
    <Details summary="As planned, and as it came">
      <Table
        caption="Time of play as planned and as it came"
        hideCaption
        head={[
          { key: 'player', label: 'Player' },
          { key: 'planned', label: 'Planned' },
          { key: 'played', label: 'Played' },
        ]}
      >
        {players.map(({ id, name }) => (
          <tr key={id}>
            <th scope="row">{name}</th>
            <td>{clockWords(secondsOf(plan.spells, id))}</td>
            <td>{clockWords(secondsOf(spells, id))}</td>
          </tr>
        ))}
      </Table>
    </Details>
  )
}
