import type { LuckOrHabit } from '#fairness/luck/luck-or-habit'
import { percent, wayText } from '#ui/luck/luck-words'
import { Details } from '#ui/page/details'
import { Table } from '#ui/page/table'
import { words } from '#ui/words'

type LuckDetailsProps = {
  readonly luck: LuckOrHabit
  readonly players: readonly { readonly id: string; readonly name: string }[]
}

/** How it was reckoned, and the numbers behind it. */
export function LuckDetails({ luck, players }: LuckDetailsProps) {
  return (
    <div className="no-print">
      <Details summary="How this is reckoned">
        <ul className="max-w-prose list-disc space-y-1.5 pl-5">
          {luck.squad ? <li>{wayText(luck.squad)}</li> : null}
          <li>Turns are counted, not minutes: minutes of one turn are not drawn one by one.</li>
          <li>Whoever keeps goal for several turns running is drawn once for all of them.</li>
          <li>
            Left out: matches; practices written as planned or typed in later; on a day, players who passed a
            turn, guests, and those with whom fewer turns were agreed.
            {luck.leftOut > 0
              ? ` Also ${words.turns(luck.leftOut)} in which places changed before the turn was over.`
              : ''}
          </li>
          <li>
            A player’s gap in a role is reckoned exactly. The more pairs of a player and a role are looked at,
            the more would stand out by luck; this is taken into account (Benjamini and Hochberg 1995).
          </li>
          <li>It tells luck from habit. It does not say that anything was done wrong.</li>
        </ul>
        {luck.players && luck.players.length > 0 ? (
          <NumbersTable all={luck.players} players={players} />
        ) : null}
      </Details>
    </div>
  )
}

type NumbersTableProps = Pick<LuckDetailsProps, 'players'> & {
  readonly all: NonNullable<LuckOrHabit['players']>
}

function NumbersTable({ all, players }: NumbersTableProps) {
  return (
    <div className="mt-4">
      <Table
        caption="Turns had, those of a fair draw, and how often a draw is as far off"
        head={[
          { key: 'player', label: 'Player' },
          { key: 'role', label: 'Role' },
          { key: 'had', label: 'Had', isFigure: true },
          { key: 'draw', label: 'Draw', isFigure: true },
          { key: 'p', label: 'As far off', isFigure: true },
          { key: 'adjusted', label: 'With all looked at', isFigure: true },
        ]}
      >
        {players.flatMap(({ id, name }) =>
          all
            .filter(({ playerId }) => playerId === id)
            .map(({ role, turns, drawnTurns, pValue, adjusted }) => (
              <tr key={`${id} ${role}`}>
                <th scope="row">{name}</th>
                <td>{words.role[role]}</td>
                <td className="figure">{turns}</td>
                <td className="figure">{drawnTurns.toFixed(1)}</td>
                <td className="figure">{percent(pValue)}</td>
                <td className="figure">{percent(adjusted)}</td>
              </tr>
            )),
        )}
      </Table>
    </div>
  )
}
