import type { ReactNode } from 'react'
import type { MatchRow } from '#fairness/matches/match-rows'
import { lines } from '#match/match'
import { capital } from '#ui/capital'
import { BalanceBar } from '#ui/figures/balance-bar'
import { judgedDifferenceText } from '#ui/figures/difference'
import { wholeMinutes } from '#ui/figures/minutes'
import { showRow } from '#ui/matches/shown-row'
import { PageLink } from '#ui/page/page-link'
import { counted } from '#ui/plural'
import { words } from '#ui/words'

type MatchPlayersTableProps = {
  readonly caption: string
  readonly rows: readonly MatchRow[]
  readonly spanSeconds: number
  /** False: not enough is written down for a judgement. */
  readonly isJudged: boolean
  readonly hrefOf: (playerId: string) => string | null
}

const lineHead = (line: (typeof lines)[number]) =>
  line === 'keeper' ? words.role.keep : capital(words.line[line])

const heads = ['On the pitch', 'Starts', ...lines.map(lineHead), 'Off']

/** Every player's matches: a table where there is room, a block for each on a phone. In the order of their names. */
export function MatchPlayersTable({ caption, rows, ...of }: MatchPlayersTableProps) {
  return (
    <table className="ruled max-lg:block">
      <caption className="sr-only">{caption}</caption>
      <thead className="max-lg:hidden">
        <tr>
          <th scope="col">Player</th>
          {heads.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody className="max-lg:block">
        {rows.map((row) => (
          <PlayerLine key={row.player.id} row={row} {...of} />
        ))}
      </tbody>
    </table>
  )
}

type PlayerLineProps = Omit<MatchPlayersTableProps, 'caption' | 'rows'> & { readonly row: MatchRow }

function PlayerLine({ row, spanSeconds, isJudged, hrefOf }: PlayerLineProps) {
  const { player, matchesThere, matchesWritten, thereSeconds, starts, dueStarts, longestOffSeconds } = row
  const { lineMinutes, offMinutes } = showRow(row)
  const href = hrefOf(player.id)
  const held = counted(matchesWritten, 'match', 'matches')
  return (
    <tr className="keep-together max-lg:grid max-lg:grid-cols-3 max-lg:gap-x-4 max-lg:gap-y-2 max-lg:border-b max-lg:border-rule-strong max-lg:py-4">
      <th scope="row" className="max-lg:static max-lg:col-span-3 max-lg:block max-lg:border-0 max-lg:p-0">
        {href ? (
          <PageLink href={href} className="tap inline-flex items-center lg:min-h-0">
            {player.name}
          </PageLink>
        ) : (
          player.name
        )}
        <div className="text-sm font-normal text-soft">
          there for {matchesThere} of {held}, {wholeMinutes(thereSeconds)} min in all
        </div>
      </th>
      <Cell head="On the pitch" isWide>
        <Played row={row} spanSeconds={spanSeconds} isJudged={isJudged} />
      </Cell>
      <Cell head="Starts">
        {starts}
        {isJudged ? (
          <span className="block text-sm text-soft">even share {oneDecimal(dueStarts)}</span>
        ) : null}
      </Cell>
      {lines.map((line) => (
        <Cell key={line} head={lineHead(line)}>
          {lineMinutes[line]} min
        </Cell>
      ))}
      <Cell head="Off">
        {offMinutes} min
        {longestOffSeconds > 0 ? (
          <span className="block text-sm text-soft">longest {wholeMinutes(longestOffSeconds)} min</span>
        ) : null}
      </Cell>
    </tr>
  )
}

type CellProps = { readonly head: string; readonly isWide?: boolean; readonly children: ReactNode }

function Cell({ head, isWide = false, children }: CellProps) {
  return (
    <td className={`max-lg:block max-lg:border-0 max-lg:p-0 ${isWide ? 'max-lg:col-span-3' : ''}`}>
      <div className="text-sm text-soft lg:hidden" aria-hidden="true">
        {head}
      </div>
      <div className="lg:whitespace-nowrap">{children}</div>
    </td>
  )
}

function Played({ row, spanSeconds, isJudged }: Pick<PlayerLineProps, 'row' | 'spanSeconds' | 'isJudged'>) {
  const { played } = showRow(row)
  const { figure, minutes, dueMinutes, differenceMinutes } = played
  if (!isJudged) return <p className="font-medium">{minutes} min</p>
  return (
    <div className="min-w-40 lg:whitespace-normal">
      <BalanceBar label="On the pitch" shown={played} spanSeconds={spanSeconds} />
      <p className="font-medium">{minutes} min</p>
      <p className="text-sm text-soft">
        even share {dueMinutes} min
        <span className="lg:hidden">, </span>
        <span className={figure.isConcern ? 'font-semibold text-accent lg:block' : 'lg:block'}>
          {judgedDifferenceText(differenceMinutes, figure.status)}
        </span>
      </p>
    </div>
  )
}

function oneDecimal(number: number): string {
  return String(Math.round(number * 10) / 10)
}
