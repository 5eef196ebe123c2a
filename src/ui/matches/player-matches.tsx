import type { BelowPromise } from '#fairness/matches/below-promise'
import type { MatchFigure } from '#fairness/matches/match-figure'
import { lines } from '#match/match'
import { wholeMinutes } from '#ui/figures/minutes'
import { formatDay } from '#ui/format-day'
import { linesSentence, startsSentence } from '#ui/matches/match-sentences'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { Table } from '#ui/page/table'
import { words } from '#ui/words'

/** A player's own match, in the order of the season. */
export type OwnMatch = {
  readonly sessionId: string
  readonly day: string
  readonly title: string
  readonly figure: MatchFigure
}

type PlayerMatchesProps = {
  readonly matches: readonly OwnMatch[]
  readonly below: readonly BelowPromise[]
  readonly hrefOf: (sessionId: string) => string
}

const heads = [
  { key: 'match', label: 'Match' },
  { key: 'played', label: 'On the pitch', isFigure: true },
  { key: 'due', label: 'Even share', isFigure: true },
  { key: 'start', label: 'Started' },
  { key: 'lines', label: 'Lines' },
  { key: 'off', label: 'Longest off', isFigure: true },
]

/** Match by match: minutes, the start, lines and the longest time off. */
export function PlayerMatches({ matches, below, hrefOf }: PlayerMatchesProps) {
  const figures = matches.map(({ figure }) => figure)
  return (
    <section>
      <SectionTitle>Match by match</SectionTitle>
      <p className="max-w-prose">
        {startsSentence(figures)} {linesSentence(figures)}
      </p>
      <Table caption="Match by match" hideCaption head={heads}>
        {matches.map(({ sessionId, day, title, figure }) => (
          <tr key={sessionId}>
            <th scope="row">
              <PageLink
                href={hrefOf(sessionId)}
                className="tap inline-flex items-center whitespace-nowrap lg:min-h-0"
              >
                {formatDay(day, 'short')}
              </PageLink>
              <span className="text-sm font-normal text-soft max-sm:sr-only sm:block">{title}</span>
            </th>
            <td className="figure">
              {wholeMinutes(figure.playedSeconds)} of {wholeMinutes(figure.thereSeconds)} min
              {below.some((one) => one.sessionId === sessionId) ? (
                <span className="block text-sm text-accent">
                  {wholeMinutes(figure.leastSeconds)} were promised
                </span>
              ) : null}
            </td>
            <td className="figure">{wholeMinutes(figure.dueSeconds)} min</td>
            <td>{figure.isStart ? 'yes' : 'no'}</td>
            <td className="whitespace-nowrap">{linesOf(figure)}</td>
            <td className="figure">{wholeMinutes(figure.longestOffSeconds)} min</td>
          </tr>
        ))}
      </Table>
    </section>
  )
}

function linesOf({ lines: seconds }: MatchFigure): string {
  const played = lines.filter((line) => seconds[line] > 0)
  return played.map((line) => `${words.line[line]} ${wholeMinutes(seconds[line])}`).join(', ') || 'none'
}
