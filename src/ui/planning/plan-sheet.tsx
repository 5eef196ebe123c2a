import type { DesignRound } from '#practice/design'
import { formatDay } from '#ui/format-day'
import { turnsWords } from '#ui/planning/plan-words'
import { type SheetPlan, type SheetRound, sheetRounds } from '#ui/planning/sheet-rounds'

export type PlanSheetProps = SheetPlan & {
  readonly squadName: string
  readonly day: string
  readonly startsAt: string | null
  readonly title: string
  readonly name: string
  readonly sides: readonly [string, string] | null
  readonly proof: string
}

/**
 * One sheet of A4 for the pitch, in black on white with letters that rain does not take away: who attacks, defends and
 * is in goal in which area, who waits, a box for each ball. Nothing else is on it.
 */
export function PlanSheet(props: PlanSheetProps) {
  const rounds = sheetRounds(props)
  return (
    <article className="plan-sheet" data-lines={linesOf(props)}>
      <header className="plan-sheet-head">
        <h1>{props.name}</h1>
        <p>
          {[props.squadName, formatDay(props.day), props.startsAt, props.title].filter(Boolean).join(' · ')}
        </p>
      </header>
      {props.sides ? <Bibs names={props.sides} players={props.players} /> : null}
      {rounds.map((round) => (
        <RoundOfSheet key={round.number} round={round} design={props.rounds[round.number - 1]} />
      ))}
      <footer className="plan-sheet-foot">
        <p>
          <strong>A</strong> attack <strong>D</strong> defence <strong>K</strong> in goal. Bold and
          underlined: comes on. ☐ tick each ball. {props.proof}
        </p>
        <p className="plan-sheet-notes">Notes</p>
      </footer>
    </article>
  )
}

/** How full the sheet is: a turn takes more room the more children are named in it. Measured for sheets of A4. */
function linesOf({ turns, players }: SheetPlan): 'few' | 'some' | 'many' | 'most' | 'all' {
  const lines = turns.length * (players.length / 14)
  if (lines <= 11) return 'few'
  if (lines <= 15) return 'some'
  if (lines <= 21) return 'many'
  return lines <= 26 ? 'most' : 'all'
}

function RoundOfSheet({
  round,
  design,
}: {
  readonly round: SheetRound
  readonly design: DesignRound | undefined
}) {
  return (
    <section
      className="keep-together overflow-x-auto print:overflow-visible"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
      tabIndex={0}
      aria-label={`Round ${round.number}`}
    >
      <h2>
        {round.number}. {design?.title} <small>{design ? turnsWords(design) : ''}</small>{' '}
        {round.keepers.length > 0 ? <small>· in goal all round: {keepersText(round)}</small> : null}
      </h2>
      <table>
        <thead>
          <tr>
            <th scope="col" className="plan-sheet-column">
              Ball
            </th>
            {round.areas.map((area) => (
              <th key={area} scope="col" className="plan-sheet-column">
                {round.areas.length > 1 ? `Area ${area}` : 'On'}
              </th>
            ))}
            <th scope="col" className="plan-sheet-column">
              Waiting
            </th>
          </tr>
        </thead>
        <tbody>
          {round.turns.map((turn) => (
            <tr key={turn.number}>
              <th scope="row" className="plan-sheet-ball">
                ☐ {turn.number}
              </th>
              {turn.areas.map((area, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: an area is its place in the turn
                <td key={index}>
                  {area.map(({ letter, names }) => (
                    <span key={letter} className="plan-sheet-side">
                      <b>{letter}</b> <Names names={names} />
                    </span>
                  ))}
                </td>
              ))}
              <td>
                <Names names={turn.waiting} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

/** Where there are several areas, a goalkeeper has to know which. */
function keepersText({ keepers, areas }: SheetRound): string {
  return keepers.map(({ name, area }) => (areas.length > 1 ? `${name} (area ${area})` : name)).join(', ')
}

function Names({ names }: { readonly names: readonly { readonly name: string; readonly isOn: boolean }[] }) {
  return names.map(({ name, isOn }, index) => (
    <span key={name}>
      {index > 0 ? ', ' : ''}
      {isOn ? <u>{name}</u> : name}
    </span>
  ))
}

function Bibs({
  names,
  players,
}: { readonly names: readonly [string, string] } & Pick<PlanSheetProps, 'players'>) {
  const of = (side: 0 | 1 | null) =>
    players
      .filter((player) => player.side === side)
      .map(({ name }) => name)
      .join(', ')
  return (
    <p className="plan-sheet-bibs">
      <b>{names[0]}</b> {of(0)} · <b>{names[1]}</b> {of(1)}
      {of(null) ? (
        <>
          {' · '}
          <b>with the ball</b> {of(null)}
        </>
      ) : null}
    </p>
  )
}
