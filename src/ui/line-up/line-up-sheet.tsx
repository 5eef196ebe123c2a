import type { PlannedSpell } from '#lineup/match-plan'
import { sayClock } from '#lineup/say-clock'
import { lineMarkOf } from '#match/line-mark'
import { lines } from '#match/match'
import { wholeMinutes } from '#ui/figures/minutes'
import { formatDay } from '#ui/format-day'
import { periodWords } from '#ui/line-up/period-words'
import { type PrintedPeriod, printedPeriods } from '#ui/line-up/printed-periods'
import { words } from '#ui/words'

export type LineUpPrintProps = {
  readonly squadName: string
  readonly day: string
  readonly startsAt: string | null
  readonly title: string
  readonly place: string
  readonly periodSeconds: readonly number[]
  readonly isShortGames: boolean
  readonly spells: readonly PlannedSpell[]
  readonly players: readonly { readonly id: string; readonly name: string }[]
}

/**
 * One sheet of A4 for the touchline, black on white: who begins where, every change with a box to tick, and who is on when
 * at a glance. Nothing of pairs or of what is owed is on it.
 */
export function LineUpSheet(props: LineUpPrintProps) {
  const periods = printedPeriods(props)
  return (
    <article className="plan-sheet line-up-sheet" data-lines={periods.length > 2 ? 'many' : 'few'}>
      <header className="plan-sheet-head">
        <h1>{props.title || 'Match'}</h1>
        <p>
          {[props.squadName, formatDay(props.day), props.startsAt, props.place].filter(Boolean).join(' · ')}
        </p>
      </header>
      <div className="line-up-sheet-periods" data-count={Math.min(4, periods.length)}>
        {periods.map((period) => (
          <PeriodOfSheet key={period.period} period={period} format={props} />
        ))}
      </div>
      <OnWhen {...props} periods={periods} />
      <footer className="plan-sheet-foot">
        <p>
          <strong>K</strong> goal <strong>B</strong> back <strong>M</strong> middle <strong>F</strong>{' '}
          forward, empty: off. ☐ tick each change. Times begin anew with each period.
        </p>
        <p className="plan-sheet-notes">Notes</p>
      </footer>
    </article>
  )
}

function PeriodOfSheet({
  period,
  format,
}: {
  readonly period: PrintedPeriod
  readonly format: Pick<LineUpPrintProps, 'periodSeconds' | 'isShortGames'>
}) {
  return (
    <section className="keep-together">
      <h2>
        {periodWords(format, period.period)} <small>{wholeMinutes(period.seconds)} min</small>
      </h2>
      <table>
        <tbody>
          {lines.map((line) =>
            period.begins[line].length === 0 ? null : (
              <tr key={line}>
                <th scope="row" className="plan-sheet-column">
                  {words.line[line]}
                </th>
                <td>{period.begins[line].join(', ')}</td>
              </tr>
            ),
          )}
          {period.changes.map(({ clock, off, on, moves }) => (
            <tr key={clock}>
              <th scope="row" className="plan-sheet-ball">
                ☐ {clock}
              </th>
              <td>
                {off.length > 0 ? (
                  <>
                    <b>OFF</b> {off.join(', ')}{' '}
                  </>
                ) : null}
                {on.length > 0 ? (
                  <>
                    <b>ON</b> <u>{on.join(', ')}</u>
                  </>
                ) : null}
                {moves.length > 0 ? `${off.length + on.length > 0 ? '; ' : ''}${moves.join(', ')}` : null}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

/** Players against the times between changes, with their minutes. */
function OnWhen({
  players,
  spells,
  periods,
  periodSeconds,
  isShortGames,
}: LineUpPrintProps & { readonly periods: readonly PrintedPeriod[] }) {
  return (
    <section
      className="keep-together overflow-x-auto print:overflow-visible"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
      tabIndex={0}
      aria-label="Who is on when"
    >
      <h2>Who is on when</h2>
      <table>
        <thead>
          <tr>
            <th scope="col" className="plan-sheet-column">
              Player
            </th>
            {periods.flatMap(({ period, start, edges }) =>
              edges.map((edge, index) => (
                <th key={edge} scope="col" className="plan-sheet-column">
                  {index === 0 ? `${periodWords({ periodSeconds, isShortGames }, period)} ` : ''}
                  {sayClock(edge - start)}
                </th>
              )),
            )}
            <th scope="col" className="plan-sheet-column">
              min
            </th>
          </tr>
        </thead>
        <tbody>
          {players.map(({ id, name }) => {
            const own = spells.filter(({ playerId }) => playerId === id)
            return (
              <tr key={id}>
                <th scope="row">{name}</th>
                {periods.flatMap(({ edges }) =>
                  edges.map((edge) => {
                    const spell = own.find(({ start, end }) => start <= edge && edge < end)
                    return <td key={edge}>{spell ? <b>{lineMarkOf(spell.line)}</b> : ''}</td>
                  }),
                )}
                <td>{wholeMinutes(own.reduce((sum, { start, end }) => sum + end - start, 0))}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </section>
  )
}
