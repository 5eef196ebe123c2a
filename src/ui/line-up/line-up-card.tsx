import { lines } from '#match/match'
import { formatDay } from '#ui/format-day'
import type { LineUpPrintProps } from '#ui/line-up/line-up-sheet'
import { periodWords } from '#ui/line-up/period-words'
import { type PrintedPeriod, printedPeriods } from '#ui/line-up/printed-periods'
import { words } from '#ui/words'

/** Lines of print that fit on one card of 74 × 105 mm. Measured. */
const linesOnCard = 25
/** So few leave room for larger letters. */
const fewLines = 15

/**
 * Cards the size of a hand, 74 × 105 mm (A7 of ISO 216), with marks to cut along: who starts where, then each change with
 * its time. As few as the periods fit on, each with whole periods.
 */
export function LineUpCard(props: LineUpPrintProps) {
  const cards = dealPeriods(printedPeriods(props))
  return (
    <div className="line-up-cards">
      {cards.map((periods, index) => (
        <article
          key={periods[0]?.period ?? 0}
          className="line-up-card"
          data-lines={sumOf(periods) <= fewLines ? 'few' : 'many'}
        >
          <header>
            <strong className="line-up-card-title">{props.title || 'Match'}</strong>{' '}
            <span>
              {formatDay(props.day, 'short')}
              {cards.length > 1 ? ` · ${index + 1} of ${cards.length}` : ''}
            </span>
          </header>
          {periods.map((period) => (
            <section key={period.period}>
              <h2>{periodWords(props, period.period)}</h2>
              <p>
                {lines.map((line) =>
                  period.begins[line].length === 0 ? null : (
                    <span key={line} className="line-up-card-line">
                      <b>{words.line[line]}</b> {period.begins[line].join(', ')}
                    </span>
                  ),
                )}
              </p>
              <ul>
                {period.changes.map(({ clock, off, on, moves }) => (
                  <li key={clock}>
                    <b className="line-up-card-clock">{clock}</b>
                    <span>
                      {off.length > 0 ? (
                        <>
                          <b>OFF</b> {off.join(', ')}{' '}
                        </>
                      ) : null}
                      {on.length > 0 ? (
                        <>
                          <b>ON</b> {on.join(', ')}
                        </>
                      ) : null}
                      {moves.length > 0
                        ? `${off.length + on.length > 0 ? '; ' : ''}${moves.join(', ')}`
                        : null}
                    </span>
                  </li>
                ))}
              </ul>
            </section>
          ))}
        </article>
      ))}
    </div>
  )
}

/** Periods one after another onto as few cards as hold them whole. */
function dealPeriods(periods: readonly PrintedPeriod[]): readonly (readonly PrintedPeriod[])[] {
  const cards: PrintedPeriod[][] = []
  let used = linesOnCard
  for (const period of periods) {
    const needed = linesOf(period)
    if (used + needed > linesOnCard) {
      cards.push([period])
      used = needed
    } else {
      cards.at(-1)?.push(period)
      used += needed
    }
  }
  return cards
}

function sumOf(periods: readonly PrintedPeriod[]): number {
  return periods.reduce((sum, period) => sum + linesOf(period), 0)
}

/** About how many lines of print a period takes: so many letters go on one line. */
function linesOf({ begins, changes }: PrintedPeriod): number {
  const letters = 38
  const length = (text: string) => Math.max(1, Math.ceil(text.length / letters))
  const starts = lines
    .filter((line) => begins[line].length > 0)
    .reduce((sum, line) => sum + length(`${words.line[line]} ${begins[line].join(', ')}`), 0)
  const changed = changes.reduce(
    (sum, { off, on, moves }) =>
      sum +
      length(
        `12:30 OFF ${off.join(', ')} ON ${on.join(', ')}${moves.length > 0 ? `; ${moves.join(', ')}` : ''}`,
      ),
    0,
  )
  return 1.5 + starts + changed
}
