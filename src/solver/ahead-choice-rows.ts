import { aheadRules } from '#ahead/ahead-rules'
import type { AheadProblem } from '#ahead/problem'
import type { Pick } from '#ahead/rule'
import type { LinearModel } from '#solver/linear-model'

/** By practice and offer the column that is 1 where it is chosen; null: a rule forbids it. */
export type ChoiceColumns = readonly (readonly (number | null)[])[]

/** Columns for what is chosen, with a row for every condition of a rule. */
export function addChoices(model: LinearModel, problem: AheadProblem): ChoiceColumns {
  const limits = aheadRules.map((rule) => rule.limits(problem))
  const never = new Set(limits.flatMap((own) => own.never.map(keyOf)))
  const columns = problem.practices.map(({ offers }, practice) =>
    offers.map((_, offer) =>
      never.has(keyOf({ practice, offer })) ? null : model.addColumn({ upper: 1, isWhole: true }),
    ),
  )
  const entriesOf = (picks: readonly Pick[]) =>
    picks.flatMap(({ practice, offer }) => {
      const column = columns[practice]?.[offer] ?? null
      return column === null ? [] : [[column, 1] as const]
    })
  for (const own of columns)
    model.addRow(
      { lower: 1, upper: 1 },
      own.flatMap((column) => (column === null ? [] : [[column, 1] as const])),
    )
  for (const { atMostOne, needs, atLeastOne } of limits) {
    for (const list of atMostOne) model.addRow({ upper: 1 }, entriesOf(list))
    for (const list of atLeastOne) model.addRow({ lower: 1 }, entriesOf(list))
    for (const { oneOf, picks } of neededBy(needs))
      model.addRow({ lower: 0 }, [
        ...entriesOf(oneOf),
        ...entriesOf(picks).map(([column]) => [column, -1] as const),
      ])
  }
  return columns
}

/** Of one practice one pick is chosen: those that need the same share a row, which says more than a row for each. */
function neededBy(needs: readonly { readonly pick: Pick; readonly oneOf: readonly Pick[] }[]) {
  const rows: {
    readonly practice: number
    readonly oneOf: readonly Pick[]
    readonly offers: Set<number>
  }[] = []
  for (const { pick, oneOf } of needs) {
    const row = rows.find((own) => own.practice === pick.practice && own.oneOf === oneOf)
    if (row) row.offers.add(pick.offer)
    else rows.push({ practice: pick.practice, oneOf, offers: new Set([pick.offer]) })
  }
  return rows.map(({ practice, oneOf, offers }) => ({
    oneOf,
    picks: [...offers].map((offer) => ({ practice, offer })),
  }))
}

function keyOf({ practice, offer }: Pick): string {
  return `${practice}:${offer}`
}
