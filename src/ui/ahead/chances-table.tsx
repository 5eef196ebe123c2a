import type { ChanceWord } from '#ahead/chance/chance-word'
import type { Chances } from '#ahead/chance/chances'
import type { AheadProblem } from '#ahead/problem'
import { wishedThemes } from '#ahead/wished-themes'
import type { RotationColumn } from '#rotation/problem'
import type { NameOfPlace } from '#ui/ahead/ahead-types'
import { columnName } from '#ui/ahead/column-names'
import { likelyThemes, openColumns } from '#ui/ahead/say-chances'
import { Table } from '#ui/page/table'
import { listed } from '#ui/plural'
import { words } from '#ui/words'

type ChancesTableProps = {
  readonly problem: Pick<AheadProblem, 'players' | 'themes'>
  readonly chances: Chances
  readonly nameOf: NameOfPlace
}

/** Of everyone, how likely it is to end inside: in words for roles and situations, in themes by their number; with the plan and as so far side by side. */
export function ChancesTable({
  problem: { players, themes },
  chances: { plan, carryOn },
  nameOf,
}: ChancesTableProps) {
  const asked = wishedThemes(themes)
  return (
    <Table
      caption="Ending the term inside the band"
      hideCaption
      head={[
        { key: 'player', label: 'Player' },
        { key: 'seats', label: 'Roles, this plan' },
        ...(carryOn ? [{ key: 'seatsSoFar', label: 'as so far' }] : []),
        ...(asked.length > 0 ? [{ key: 'themes', label: 'Themes likely, this plan', isFigure: true }] : []),
        ...(asked.length > 0 && carryOn ? [{ key: 'themesSoFar', label: 'as so far', isFigure: true }] : []),
      ]}
    >
      {plan.players.map((own, player) => {
        const soFar = carryOn?.players[player]
        return (
          <tr key={players[player]?.id}>
            <th scope="row">{nameOf(player)}</th>
            <ChanceCell word={own.seats.word} open={openColumns(own)} />
            {soFar ? <ChanceCell word={soFar.seats.word} open={[]} isSoft /> : null}
            {asked.length > 0 ? (
              <td className="figure whitespace-nowrap">
                {likelyThemes(own, asked)} of {asked.length}
              </td>
            ) : null}
            {asked.length > 0 && soFar ? (
              <td className="figure whitespace-nowrap text-soft">
                {likelyThemes(soFar, asked)} of {asked.length}
              </td>
            ) : null}
          </tr>
        )
      })}
    </Table>
  )
}

const marks: Readonly<Record<ChanceWord, string>> = { likely: '●', even: '◐', unlikely: '○' }

function ChanceCell({
  word,
  open,
  isSoft = false,
}: {
  readonly word: ChanceWord
  /** What stands in the way. */
  readonly open: readonly RotationColumn[]
  readonly isSoft?: boolean
}) {
  return (
    <td className={isSoft ? 'text-soft' : ''}>
      <span className="whitespace-nowrap">
        <span aria-hidden="true">{marks[word]} </span>
        {words.chance[word]}
      </span>
      {open.length > 0 ? (
        <span className="block text-sm text-soft">
          {listed(open.map((column) => columnName(column).toLowerCase()))}
        </span>
      ) : null}
    </td>
  )
}
