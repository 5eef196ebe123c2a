import { evenPeriods, evenSeconds, mostPlayersFor } from '#match/format/least-possible'
import type { MatchFormat } from '#match/format/match-format'
import { SectionTitle } from '#ui/page/section-title'
import { Table, type TableHead } from '#ui/page/table'

const head: readonly TableHead[] = [
  { key: 'players', label: 'Come' },
  { key: 'even', label: 'Even share', isFigure: true },
  { key: 'periods', label: 'In whole periods' },
]

/** What an even match gives each, by how many come: before anybody plans it. */
export function EvenSharePart({ format }: { readonly format: MatchFormat }) {
  const { aSide, periodSeconds, mostPlayers } = format
  const whole = periodSeconds.reduce((sum, seconds) => sum + seconds, 0)
  const most = Math.min(2 * aSide + 1, mostPlayers ?? Number.POSITIVE_INFINITY)
  const rows = Array.from({ length: most - aSide + 1 }, (_, index) => aSide + index)
  const kept = mostPlayersFor(format.leastTime, { ...format, policyShare: null })
  return (
    <section>
      <SectionTitle note="When all play the same, and each may play anywhere.">What it comes to</SectionTitle>
      <Table
        caption="Minutes of each player, by how many come"
        head={kept === null ? head : [...head, { key: 'least', label: 'Least time for all' }]}
      >
        {rows.map((players) => {
          const even = evenSeconds(format, players)
          return (
            <tr key={players}>
              <th scope="row">{players}</th>
              <td className="figure">
                {Math.round(even / 6) / 10} min, {Math.round((even / whole) * 100)} %
              </td>
              <td className="whitespace-nowrap">{periodsText(format, players)}</td>
              {kept === null ? null : (
                <td className="whitespace-nowrap">{players <= kept ? 'possible' : 'not possible'}</td>
              )}
            </tr>
          )
        })}
      </Table>
    </section>
  )
}

/** "8 have 3, 2 have 2". */
export function periodsText(format: MatchFormat, players: number): string {
  const { periods, playersWithThem } = evenPeriods(format, players)
  const others = players - playersWithThem
  return others === 0
    ? `all have ${periods}`
    : `${playersWithThem} have ${periods}, ${others} have ${periods - 1}`
}
