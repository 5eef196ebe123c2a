import type { BelowPromise } from '#fairness/matches/below-promise'
import type { MatchFigure, MatchFigures } from '#fairness/matches/match-figure'
import type { MatchRow } from '#fairness/matches/match-rows'
import { wholeMinutes } from '#ui/figures/minutes'
import { formatDay } from '#ui/format-day'
import { type MatchColumn, matchColumns } from '#ui/matches/match-columns'
import { PageLink } from '#ui/page/page-link'
import { Table } from '#ui/page/table'

export type NamedMatch = MatchFigures & { readonly title: string; readonly startsAt: string | null }

type MatchGridProps = {
  readonly caption: string
  readonly rows: readonly MatchRow[]
  readonly matches: readonly NamedMatch[]
  readonly below: readonly BelowPromise[]
  readonly hrefOf: (sessionId: string) => string
}

/** Minutes on the pitch, player by match; a day with several matches is added up. */
export function MatchGrid({ caption, rows, matches, below, hrefOf }: MatchGridProps) {
  const columns = matchColumns(matches)
  const isBelow = (sessionId: string, playerId: string) =>
    below.some((one) => one.sessionId === sessionId && one.figure.playerId === playerId)
  return (
    <Table
      caption={caption}
      hideCaption
      head={[
        { key: 'player', label: 'Player' },
        ...columns.map((column) => ({
          key: keyOf(column),
          label: <ColumnHead column={column} hrefOf={hrefOf} />,
          isFigure: true,
        })),
      ]}
    >
      {rows.map(({ player }) => (
        <tr key={player.id}>
          <th scope="row">{player.name}</th>
          {columns.map((column) => (
            <td key={keyOf(column)} className="figure">
              {column.of === 'match' ? (
                <MatchCell
                  figure={figureIn(column.match, player.id)}
                  isBelow={isBelow(column.match.sessionId, player.id)}
                />
              ) : (
                <DayCell figures={column.matches.map((match) => figureIn(match, player.id))} />
              )}
            </td>
          ))}
        </tr>
      ))}
    </Table>
  )
}

function keyOf(column: MatchColumn<NamedMatch>): string {
  return column.of === 'match' ? column.match.sessionId : column.day
}

function figureIn({ figures }: NamedMatch, playerId: string): MatchFigure | undefined {
  return figures.find((figure) => figure.playerId === playerId)
}

function ColumnHead({
  column,
  hrefOf,
}: {
  readonly column: MatchColumn<NamedMatch>
  readonly hrefOf: MatchGridProps['hrefOf']
}) {
  if (column.of === 'day') return <>{formatDay(column.day, 'short')}, all</>
  const { sessionId, day, title, startsAt, wholeSeconds } = column.match
  return (
    <>
      <PageLink href={hrefOf(sessionId)} className="tap inline-flex items-end">
        {formatDay(day, 'short')}
        <span className="sr-only">
          {startsAt ? ` ${startsAt}` : ''} {title}
        </span>
      </PageLink>
      <span className="block font-normal">{wholeMinutes(wholeSeconds)} min</span>
    </>
  )
}

/** A start and time in goal by a letter, less than promised by a sign: none of it by colour alone. */
function MatchCell({ figure, isBelow }: { readonly figure?: MatchFigure; readonly isBelow: boolean }) {
  if (!figure)
    return (
      <span className="text-soft">
        <span aria-hidden="true">–</span>
        <span className="sr-only">not there</span>
      </span>
    )
  return (
    <>
      <Mark isShown={isBelow} sign="↓" word="less than promised" />
      <Mark isShown={figure.isStart} sign="S" word="started" />
      <Mark isShown={figure.lines.keeper > 0} sign="K" word="in goal" />
      <span className={isBelow ? 'font-semibold text-accent' : undefined}>
        {wholeMinutes(figure.playedSeconds)}
      </span>
    </>
  )
}

type MarkProps = { readonly isShown: boolean; readonly sign: string; readonly word: string }

function Mark({ isShown, sign, word }: MarkProps) {
  if (!isShown) return null
  return (
    <span className="mr-1 text-xs text-soft">
      <span aria-hidden="true">{sign}</span>
      <span className="sr-only">{word}, </span>
    </span>
  )
}

function DayCell({ figures }: { readonly figures: readonly (MatchFigure | undefined)[] }) {
  const seconds = figures.reduce((sum, figure) => sum + (figure?.playedSeconds ?? 0), 0)
  return <span className="font-semibold">{wholeMinutes(seconds)}</span>
}
