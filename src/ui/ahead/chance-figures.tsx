import type { Chances, WayChances } from '#ahead/chance/chances'
import type { HardestToLose } from '#ahead/chance/hardest-to-lose'
import type { AheadProblem } from '#ahead/problem'
import { rotationColumns } from '#rotation/problem'
import type { NameOfPlace } from '#ui/ahead/ahead-types'
import { chanceText } from '#ui/ahead/chance-text'
import { columnName } from '#ui/ahead/column-names'
import { playedSentence } from '#ui/ahead/say-chances'
import { minutesText } from '#ui/figures/minutes'
import { Table } from '#ui/page/table'

type ChanceFiguresProps = {
  readonly problem: Pick<AheadProblem, 'players' | 'themes'>
  readonly chances: Chances
  readonly hardest: HardestToLose | null
  readonly nameOf: NameOfPlace
  readonly sessionOf: (practice: number) => string
}

/** The numbers behind the words, with their intervals, and what they mean. */
export function ChanceFigures({ problem, chances, hardest, nameOf, sessionOf }: ChanceFiguresProps) {
  const { plan, carryOn } = chances
  return (
    <div className="space-y-6 pt-3">
      <div className="max-w-prose space-y-2 text-sm text-soft">
        <p>
          {playedSentence(chances)}{' '}
          {chances.isExact
            ? null
            : 'In brackets: within what the true chance lies, 95 times in 100 (Wilson’s interval).'}
        </p>
        <p>
          Likely is two in three or more, unlikely one in three or less. Inside means that no flag would
          stand: not too little attacking, defending or of a situation, not too much goal or waiting, not too
          little of a theme’s wished share, each by more than its tolerance.
        </p>
        <p>
          Each player comes or stays away by itself, as often as so far. With the plan, what was meant for
          each is dealt among those who came, and who is behind it gets a little more. As so far means an even
          share and each player’s own difference per minute carried on, in the parts of themes that the squad
          has had.
        </p>
      </div>
      <WayTable caption="All that is judged together" {...{ problem, chances, nameOf }} />
      <ColumnTable caption="With this plan" way={plan} problem={problem} nameOf={nameOf} />
      {carryOn ? (
        <ColumnTable caption="If all goes on as so far" way={carryOn} problem={problem} nameOf={nameOf} />
      ) : null}
      {hardest ? <LostTable hardest={hardest} sessionOf={sessionOf} /> : null}
    </div>
  )
}

function WayTable({
  caption,
  problem: { players },
  chances: { plan, carryOn },
  nameOf,
}: {
  readonly caption: string
  readonly problem: Pick<AheadProblem, 'players'>
  readonly chances: Chances
  readonly nameOf: NameOfPlace
}) {
  const ways = carryOn ? [plan, carryOn] : [plan]
  return (
    <Table
      caption={caption}
      head={[
        { key: 'player', label: 'Player' },
        { key: 'plan', label: 'This plan', isFigure: true },
        ...(carryOn ? [{ key: 'soFar', label: 'As so far', isFigure: true }] : []),
      ]}
    >
      {plan.players.map((_, player) => (
        <tr key={players[player]?.id}>
          <th scope="row">{nameOf(player)}</th>
          {ways.map((way, at) => {
            const own = way.players[player]
            return (
              <td key={at === 0 ? 'plan' : 'soFar'} className="figure whitespace-nowrap">
                {own ? chanceText(own.all) : null}
              </td>
            )
          })}
        </tr>
      ))}
      <tr>
        <th scope="row">Everyone at once</th>
        {ways.map((way, at) => (
          <td key={at === 0 ? 'plan' : 'soFar'} className="figure whitespace-nowrap">
            {chanceText(way.everyone)}
          </td>
        ))}
      </tr>
      <tr>
        <th scope="row">How many, on average</th>
        {ways.map((way, at) => (
          <td key={at === 0 ? 'plan' : 'soFar'} className="figure">
            {Math.round(way.meanInside.all * 10) / 10}
          </td>
        ))}
      </tr>
    </Table>
  )
}

function ColumnTable({
  caption,
  way,
  problem: { players, themes },
  nameOf,
}: {
  readonly caption: string
  readonly way: WayChances
  readonly problem: Pick<AheadProblem, 'players' | 'themes'>
  readonly nameOf: NameOfPlace
}) {
  const asked = themes.flatMap(({ id, name, wishedShare }, theme) =>
    wishedShare > 0 ? [{ id, name, theme }] : [],
  )
  return (
    <Table
      caption={caption}
      head={[
        { key: 'player', label: 'Player' },
        ...rotationColumns.map((column) => ({ key: column, label: columnName(column), isFigure: true })),
        ...asked.map(({ id, name }) => ({ key: id, label: name, isFigure: true })),
      ]}
    >
      {way.players.map(({ columns, byTheme }, player) => (
        <tr key={players[player]?.id}>
          <th scope="row">{nameOf(player)}</th>
          {rotationColumns.map((column) => (
            <td key={column} className="figure whitespace-nowrap">
              {chanceText(columns[column])}
            </td>
          ))}
          {asked.map(({ id, theme }) => {
            const own = byTheme[theme]
            return (
              <td key={id} className="figure whitespace-nowrap">
                {own ? chanceText(own) : null}
              </td>
            )
          })}
        </tr>
      ))}
    </Table>
  )
}

function LostTable({
  hardest,
  sessionOf,
}: {
  readonly hardest: HardestToLose
  readonly sessionOf: (practice: number) => string
}) {
  return (
    <Table
      caption="Without one practice, the rest of the plan as it is"
      head={[
        { key: 'session', label: 'Without' },
        { key: 'inside', label: 'Fewer inside', isFigure: true },
        { key: 'seats', label: 'Fewer inside in roles', isFigure: true },
        { key: 'minutes', label: 'More outside, all together', isFigure: true },
      ]}
    >
      {hardest.lost.map(({ practice, fewerInside, fewerInSeats, moreOutside }) => (
        <tr key={practice}>
          <th scope="row">{sessionOf(practice)}</th>
          <td className="figure">{lossText(fewerInside.mean)}</td>
          <td className="figure">{lossText(fewerInSeats.mean)}</td>
          <td className="figure">{minutesText(moreOutside.mean)}</td>
        </tr>
      ))}
    </Table>
  )
}

function lossText(count: number): string {
  const shown = Math.round(count * 100) / 100
  return String(shown === 0 ? 0 : shown).replace('-', '−')
}
