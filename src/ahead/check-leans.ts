import { evenSeats } from '#ahead/even-seats'
import { type AheadPlan, chosenOffer } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { noSeats, type SeatColumn, type SeatSeconds, seatColumns } from '#ahead/seat-column'

/** Seconds that sums may be off by: they are added in another order than they were made in. */
const slack = 1e-3

/**
 * What of a plan's leans cannot be played, or is not gentle, in sentences for whoever looks into it; none: all can. In a
 * practice what some get more of a seat column, others get less; nobody has less than nothing of it, sits longer than it
 * is expected to be there, or keeps without being down for it. Over all practices nobody gets less or more of a column
 * than is gentle.
 */
export function checkLeans(problem: AheadProblem, { choices, leans }: AheadPlan): readonly string[] {
  const faults: string[] = []
  const totals = problem.players.map(() => ({ even: { ...noSeats }, lean: { ...noSeats } }))
  problem.practices.forEach((practice, at) => {
    const where = `Practice ${practice.id}`
    const offer = chosenOffer(problem, choices, at)
    const own = leans[at]
    if (!offer || own?.length !== problem.players.length) {
      faults.push(`${where} has ${offer ? 'no lean for each player' : 'no offer chosen'}.`)
      return
    }
    const even = evenSeats(problem, practice, offer)
    for (const column of seatColumns) {
      const sum = own.reduce((all, lean) => all + lean[column], 0)
      if (!(Math.abs(sum) <= slack)) faults.push(`${where}: leans of ${column} add up to ${sum}, not to 0.`)
    }
    own.forEach((lean, player) => {
      const name = problem.players[player]?.id
      let seated = 0
      for (const column of seatColumns) {
        const seconds = (even[player]?.[column] ?? 0) + lean[column]
        seated += seconds
        if (!(seconds >= -slack)) faults.push(`${where}: ${name} would have ${seconds} seconds of ${column}.`)
        if (column === 'keep' && lean.keep !== 0 && !problem.players[player]?.keeps)
          faults.push(`${where}: ${name} would keep goal and is not down for it.`)
        addTo(totals[player]?.even, column, even[player]?.[column] ?? 0)
        addTo(totals[player]?.lean, column, lean[column])
      }
      const there = (practice.comes[player] ?? 0) * offer.liveSeconds
      if (!(seated <= there + slack))
        faults.push(`${where}: ${name} would sit for ${seated} seconds of ${there} expected.`)
    })
  })
  return [...faults, ...totals.flatMap((own, player) => notGentle(problem, player, own))]
}

type Totals = { readonly even: SeatSeconds; readonly lean: SeatSeconds }

function notGentle(
  { players, gentle }: AheadProblem,
  player: number,
  { even, lean }: Totals,
): readonly string[] {
  return seatColumns.flatMap((column) => {
    const seconds = even[column] + lean[column]
    const [least, most] = [gentle.least * even[column], gentle.most * even[column]]
    if (least - slack <= seconds && seconds <= most + slack) return []
    return [
      `${players[player]?.id} would have ${seconds} seconds of ${column}, and ${least} to ${most} is gentle.`,
    ]
  })
}

function addTo(totals: Record<SeatColumn, number> | undefined, column: SeatColumn, seconds: number): void {
  if (totals) totals[column] += seconds
}
