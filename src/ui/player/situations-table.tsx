import type { Situation } from '#exposure/column'
import type { JudgedFigure } from '#fairness/book/judged-figure'
import { BalanceBar } from '#ui/figures/balance-bar'
import { judgedDifferenceText } from '#ui/figures/difference'
import { showFigures } from '#ui/figures/shown-figure'
import { Turns } from '#ui/figures/turns'
import { Table } from '#ui/page/table'
import { words } from '#ui/words'

export type SituationFigure = { readonly situation: Situation; readonly figure: JudgedFigure }

type SituationsTableProps = {
  readonly figures: readonly SituationFigure[]
  readonly spanSeconds: number
  readonly isJudged: boolean
}

/** Playing time by the numbers the player's own side had. */
export function SituationsTable({ figures, spanSeconds, isJudged }: SituationsTableProps) {
  const shown = showFigures(figures.map(({ figure }) => figure))
  return (
    <Table
      caption="Playing time by the numbers the own side had"
      hideCaption
      head={[
        { key: 'situation', label: 'Own side had' },
        { key: 'bar', label: 'Balance' },
        { key: 'had', label: 'Had' },
        { key: 'even', label: 'Even share' },
        { key: 'difference', label: 'Difference' },
      ]}
    >
      {figures.map(({ situation, figure }, index) => {
        const one = shown[index]
        if (!one) return null
        return (
          <tr key={situation}>
            <th scope="row" className="whitespace-nowrap">
              {words.situation[situation]}
            </th>
            <td>
              {isJudged ? (
                <BalanceBar label={words.situation[situation]} shown={one} spanSeconds={spanSeconds} />
              ) : null}
            </td>
            <td className="whitespace-nowrap">
              <Turns minutes={one.minutes} turns={figure.turns} />
            </td>
            <td className="whitespace-nowrap">
              <Turns minutes={one.dueMinutes} turns={figure.dueTurns} />
            </td>
            <td className={figure.isConcern && isJudged ? 'font-semibold text-accent' : undefined}>
              {isJudged ? judgedDifferenceText(one.differenceMinutes, figure.status) : '–'}
            </td>
          </tr>
        )
      })}
    </Table>
  )
}
