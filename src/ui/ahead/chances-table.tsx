import type { ChanceWord } from '#ahead/chance/chance-word'
import type { Chances } from '#ahead/chance/chances'
import type { AheadProblem } from '#ahead/problem'
import type { NameOfPlace } from '#ui/ahead/ahead-types'
import { Table } from '#ui/page/table'
import { words } from '#ui/words'

type ChancesTableProps = {
  readonly problem: Pick<AheadProblem, 'players'>
  readonly chances: Chances
  readonly nameOf: NameOfPlace
}

/** Of everyone, how likely it is to end inside: in words, with the plan and as so far side by side. */
export function ChancesTable({
  problem: { players },
  chances: { plan, carryOn },
  nameOf,
}: ChancesTableProps) {
  return (
    <Table
      caption="Ending the term inside the tolerance"
      hideCaption
      head={[
        { key: 'player', label: 'Player' },
        { key: 'seats', label: 'Roles, this plan' },
        ...(carryOn ? [{ key: 'seatsSoFar', label: 'as so far' }] : []),
        { key: 'themes', label: 'Themes, this plan' },
        ...(carryOn ? [{ key: 'themesSoFar', label: 'as so far' }] : []),
      ]}
    >
      {plan.players.map(({ seats, themes }, player) => {
        const soFar = carryOn?.players[player]
        return (
          <tr key={players[player]?.id}>
            <th scope="row">{nameOf(player)}</th>
            <ChanceCell word={seats.word} />
            {soFar ? <ChanceCell word={soFar.seats.word} isSoft /> : null}
            <ChanceCell word={themes.word} />
            {soFar ? <ChanceCell word={soFar.themes.word} isSoft /> : null}
          </tr>
        )
      })}
    </Table>
  )
}

const marks: Readonly<Record<ChanceWord, string>> = { likely: '●', even: '◐', unlikely: '○' }

function ChanceCell({ word, isSoft = false }: { readonly word: ChanceWord; readonly isSoft?: boolean }) {
  return (
    <td className={`whitespace-nowrap ${isSoft ? 'text-soft' : ''}`}>
      <span aria-hidden="true">{marks[word]} </span>
      {words.chance[word]}
    </td>
  )
}
