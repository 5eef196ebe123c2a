import type { ChanceInside, Chances, WayChances } from '#ahead/chance/chances'
import type { HardestToLose } from '#ahead/chance/hardest-in-slices'
import type { AheadProblem } from '#ahead/problem'
import { wishedThemes } from '#ahead/wished-themes'
import { rotationColumns } from '#rotation/problem'
import type { NameOfPlace } from '#ui/ahead/ahead-types'
import { chanceText } from '#ui/ahead/chance-text'
import { columnName } from '#ui/ahead/column-names'
import { practiceDay } from '#ui/ahead/practice-day'
import { playedSentence } from '#ui/ahead/say-chances'
import { minutesText } from '#ui/figures/minutes'
import { Table } from '#ui/page/table'
import { listed } from '#ui/plural'

type ChanceFiguresProps = {
  readonly problem: Pick<AheadProblem, 'players' | 'themes' | 'practices'>
  readonly chances: Chances
  readonly hardest: HardestToLose | null
  readonly nameOf: NameOfPlace
}

/** The numbers behind the words, with their intervals, and what they mean. */
export function ChanceFigures({ problem, chances, hardest, nameOf }: ChanceFiguresProps) {
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
          little of a theme’s wished share, each by more than the band.
        </p>
        <p>
          Each player comes or stays away by itself, as often as so far. With the plan, what was meant for
          each is dealt among those who came, and who is behind it gets a little more. As so far means an even
          share and each player’s own difference per minute carried on, in the parts of themes that the squad
          has had.
        </p>
      </div>
      <TogetherTable {...{ problem, chances, nameOf }} />
      <ColumnTable caption="With this plan" way={plan} problem={problem} nameOf={nameOf} />
      {carryOn ? (
        <ColumnTable caption="If all goes on as so far" way={carryOn} problem={problem} nameOf={nameOf} />
      ) : null}
      {hardest ? <LostTable problem={problem} hardest={hardest} /> : null}
    </div>
  )
}

/** What is judged together: roles and situations, and these with the themes. */
function TogetherTable({
  problem: { players },
  chances: { plan, carryOn },
  nameOf,
}: {
  readonly problem: Pick<AheadProblem, 'players'>
  readonly chances: Chances
  readonly nameOf: NameOfPlace
}) {
  const ways = [{ key: 'plan', way: plan }, ...(carryOn ? [{ key: 'soFar', way: carryOn }] : [])]
  const wayLabel = (key: string, what: string) => (key === 'plan' ? `${what}, this plan` : 'as so far')
  return (
    <Table
      caption="Inside in all of it at once"
      head={[
        { key: 'player', label: 'Player' },
        ...ways.map(({ key }) => ({ key: `${key} seats`, label: wayLabel(key, 'Roles'), isFigure: true })),
        ...ways.map(({ key }) => ({ key, label: wayLabel(key, 'Roles and themes'), isFigure: true })),
      ]}
    >
      {plan.players.map((_, player) => (
        <tr key={players[player]?.id}>
          <th scope="row">{nameOf(player)}</th>
          {ways.map(({ key, way }) => (
            <FigureCell key={`${key} seats`} chance={way.players[player]?.seats} />
          ))}
          {ways.map(({ key, way }) => (
            <FigureCell key={key} chance={way.players[player]?.all} />
          ))}
        </tr>
      ))}
      <tr>
        <th scope="row">How many, on average</th>
        {ways.map(({ key, way }) => (
          <td key={`${key} seats`} className="figure">
            {Math.round(way.meanInside.seats * 10) / 10}
          </td>
        ))}
        {ways.map(({ key, way }) => (
          <td key={key} className="figure">
            {Math.round(way.meanInside.all * 10) / 10}
          </td>
        ))}
      </tr>
      <tr>
        <th scope="row">Everyone at once</th>
        {ways.map(({ key }) => (
          <td key={`${key} seats`} />
        ))}
        {ways.map(({ key, way }) => (
          <FigureCell key={key} chance={way.everyone} />
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
  const open = rotationColumns.filter((column) =>
    way.players.some(({ columns }) => columns[column].chance < 1),
  )
  const sure = rotationColumns.filter((column) => !open.includes(column))
  return (
    <Table
      caption={
        sure.length === 0
          ? caption
          : `${caption}. Certain for everyone: ${listed(sure.map((column) => columnName(column).toLowerCase()))}.`
      }
      head={[
        { key: 'player', label: 'Player' },
        ...open.map((column) => ({ key: column, label: columnName(column), isFigure: true })),
        ...wishedThemes(themes).map((theme) => ({
          key: `theme ${theme}`,
          label: themes[theme]?.name ?? '',
          isFigure: true,
        })),
      ]}
    >
      {way.players.map(({ columns, byTheme }, player) => (
        <tr key={players[player]?.id}>
          <th scope="row">{nameOf(player)}</th>
          {open.map((column) => (
            <FigureCell key={column} chance={columns[column]} />
          ))}
          {wishedThemes(themes).map((theme) => (
            <FigureCell key={themes[theme]?.id} chance={byTheme[theme]} />
          ))}
        </tr>
      ))}
    </Table>
  )
}

/** What is as good as certain is drawn softly, so that the rest is seen. */
function FigureCell({ chance }: { readonly chance: ChanceInside | undefined }) {
  const isSure = chance !== undefined && chance.chance >= 0.99
  return (
    <td className={`figure whitespace-nowrap ${isSure ? 'text-soft' : ''}`}>
      {chance ? chanceText(chance) : null}
    </td>
  )
}

function LostTable({
  problem,
  hardest,
}: {
  readonly problem: Pick<AheadProblem, 'practices'>
  readonly hardest: HardestToLose
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
          <th scope="row">{practiceDay(problem, practice)}</th>
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
