import { type Role, roles } from '#exposure/column'
import type { PlayerTotals, RoleTotal } from '#ui/entry/session-totals'
import { wholeMinutes } from '#ui/figures/minutes'
import { RoleMark } from '#ui/figures/role-mark'
import { Table } from '#ui/page/table'

type TotalsTableProps = {
  readonly totals: readonly PlayerTotals[]
  readonly names: ReadonlyMap<string, string>
  readonly kind: 'practice' | 'match'
}

/** What one session comes to for each player: turns and minutes by role, with the even share of that session beside them. */
export function TotalsTable({ totals, names, kind }: TotalsTableProps) {
  return (
    <Table
      caption={
        kind === 'practice'
          ? 'Turns and minutes; in brackets the even share of this practice'
          : 'Minutes; in brackets the even share of this match'
      }
      head={[
        { key: 'player', label: 'Player' },
        ...roles.map((role) => ({ key: role, label: <RoleHead role={role} kind={kind} />, isFigure: true })),
      ]}
    >
      {totals.map(({ playerId, roles: own }) => (
        <tr key={playerId}>
          <th scope="row">{names.get(playerId) || 'Guest'}</th>
          {roles.map((role) => (
            <td key={role} className="figure">
              {totalText(own[role], kind)}
            </td>
          ))}
        </tr>
      ))}
    </Table>
  )
}

/** On a phone the letter alone; its word is read out. */
function RoleHead({ role, kind }: { readonly role: Role; readonly kind: 'practice' | 'match' }) {
  return (
    <>
      <span className="sm:hidden">
        <RoleMark role={role} kind={kind} hasWord={false} />
      </span>
      <span className="hidden sm:inline">
        <RoleMark role={role} kind={kind} />
      </span>
    </>
  )
}

function totalText({ seconds, turns, fairSeconds }: RoleTotal, kind: 'practice' | 'match') {
  const fair = `(${tenths(fairSeconds)})`
  return (
    <>
      {kind === 'practice' ? <span className="block text-soft sm:inline">{turns} × </span> : null}
      <span className="font-medium">{kind === 'practice' ? tenths(seconds) : wholeMinutes(seconds)}</span>
      <span className="block text-soft sm:inline">
        {' '}
        {kind === 'practice' ? fair : `(${wholeMinutes(fairSeconds)})`}
      </span>
    </>
  )
}

// One practice is short: whole minutes would show nothing of a turn.
function tenths(seconds: number): string {
  return (Math.round(seconds / 6) / 10).toFixed(1)
}
