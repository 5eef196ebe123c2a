import type { BookRow } from '#fairness/book/book-rows'
import { BookFigure } from '#ui/book/book-figure'
import { OpenGoalNote } from '#ui/book/open-goal-note'
import { wholeMinutes } from '#ui/figures/minutes'
import { RoleMark } from '#ui/figures/role-mark'
import { showFigures } from '#ui/figures/shown-figure'
import { PageLink } from '#ui/page/page-link'
import { counted } from '#ui/plural'

type BookTableProps = {
  readonly caption: string
  readonly rows: readonly BookRow[]
  readonly kind: 'practice' | 'match'
  /** What half of every bar stands for. */
  readonly spanSeconds: number
  /** False: not enough is written down for a judgement. */
  readonly isJudged: boolean
  /** Where a player's own page is; null where it has none. */
  readonly hrefOf: (playerId: string) => string | null
}

/** Players by roles: a table where there is room, a block for each player on a phone. Always in the order of their names. */
export function BookTable({ caption, rows, kind, spanSeconds, isJudged, hrefOf }: BookTableProps) {
  const columns = rows[0]?.figures.map(({ role }) => role) ?? []
  return (
    <table className="ruled book">
      <caption className="sr-only">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Player</th>
          {columns.map((role) => (
            <th key={role} scope="col">
              <RoleMark role={role} kind={kind} />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <PlayerLine
            key={row.player.id}
            row={row}
            kind={kind}
            spanSeconds={spanSeconds}
            isJudged={isJudged}
            href={hrefOf(row.player.id)}
          />
        ))}
      </tbody>
    </table>
  )
}

type PlayerLineProps = Omit<BookTableProps, 'caption' | 'rows' | 'hrefOf'> & {
  readonly row: BookRow
  readonly href: string | null
}

function PlayerLine({ row, kind, spanSeconds, isJudged, href }: PlayerLineProps) {
  const shown = showFigures(row.figures.map(({ figure }) => figure))
  const held =
    kind === 'practice'
      ? counted(row.sessionsWritten, 'practice')
      : counted(row.sessionsWritten, 'match', 'matches')
  return (
    <tr className="keep-together">
      <th scope="row">
        {href ? (
          <PageLink href={href} className="tap inline-flex items-center lg:min-h-0">
            {row.player.name}
          </PageLink>
        ) : (
          row.player.name
        )}
        <div className="text-sm font-normal text-soft">
          there for {row.sessionsThere} of {held}, {wholeMinutes(row.liveSeconds)} min in all
        </div>
        {row.openGoal ? (
          <div className="max-w-80 font-normal">
            <OpenGoalNote openGoal={row.openGoal} />
          </div>
        ) : null}
      </th>
      {row.figures.map(({ role }, index) => {
        const one = shown[index]
        const isRoleJudged = isJudged && (row.hasMatchesForRoles || role === 'keep' || role === 'rest')
        return one ? (
          <td key={role}>
            <div className="lg:hidden" aria-hidden="true">
              <RoleMark role={role} kind={kind} />
            </div>
            <BookFigure
              role={role}
              kind={kind}
              shown={one}
              spanSeconds={spanSeconds}
              isMostlyAsPlanned={row.isMostlyAsPlanned}
              isJudged={isRoleJudged}
              passedTurns={role === 'rest' ? 0 : row.passed[role].turns}
            />
          </td>
        ) : null
      })}
    </tr>
  )
}
