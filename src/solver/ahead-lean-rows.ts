import { seatColumns } from '#ahead/seat-column'
import type { EvenColumns } from '#solver/ahead-even-rows'
import { type AheadFrame, entry } from '#solver/ahead-frame'

/** Column of a lean by bin, player and place of the seat column; null: there is nothing to lean on. */
export type LeanColumns = EvenColumns

/** Who gets more of which seat: what some get more others get less, never less than nothing, and gently over all. */
export function addLeans({ linear, problem }: AheadFrame, even: EvenColumns): LeanColumns {
  const { players, gentle } = problem
  const free = { lower: Number.NEGATIVE_INFINITY, upper: Number.POSITIVE_INFINITY, isWhole: false }
  const leans = even.map((bin) =>
    bin.map((columns) =>
      columns.map((share) => {
        if (share === null) return null
        const own = linear.addColumn(free)
        if (even.length > 1 || gentle.least < 0)
          linear.addRow({ lower: 0 }, [
            [share, 1],
            [own, 1],
          ])
        return own
      }),
    ),
  )
  seatColumns.forEach((_, column) => {
    for (const bin of leans)
      linear.addRow(
        { lower: 0, upper: 0 },
        bin.flatMap((own) => entry(own[column])),
      )
    players.forEach((_, player) => {
      const own = leans.flatMap((bin) => entry(bin[player]?.[column]))
      if (own.length === 0) return
      const shares = (by: number) => even.flatMap((bin) => entry(bin[player]?.[column], by))
      linear.addRow({ upper: 0 }, [...own, ...shares(1 - gentle.most)])
      linear.addRow({ lower: 0 }, [...own, ...shares(1 - gentle.least)])
    })
  })
  return leans
}
