import type { PlannedBalance } from '#planning/plan-balance'
import { closedShare, sayPart } from '#rotation/gentle-gaps'

/** A gap smaller than this is not worth a word; half a turn or so, common practice, no source. */
const worthAWord = 30

const doing = { attack: 'attacking', defend: 'defending' } as const

/**
 * What part of the differences from an even share a practice closes, in a sentence for attack and one for defence:
 * "Closes a third of the differences in attacking today; the rest carries over." None where there are hardly any.
 */
export function sayClosed(balances: readonly PlannedBalance[], isGentle: boolean): readonly string[] {
  return (['attack', 'defend'] as const).flatMap((role) => {
    const figures = balances
      .map(({ roles }) => roles[role])
      .filter(({ before }) => Math.abs(before) >= worthAWord)
    const all = figures.reduce((sum, { before }) => sum + Math.abs(before), 0)
    if (figures.length === 0) return []
    const closed = figures.reduce(
      (sum, { before, seconds, dueSeconds }) =>
        sum + Math.abs(before) * (closedShare(before, { seconds, fair: dueSeconds }) ?? 0),
      0,
    )
    return [sayShare(closed / all, doing[role], isGentle)]
  })
}

function sayShare(share: number, what: string, isGentle: boolean): string {
  const gently = isGentle ? ', gently' : ''
  if (share < 0.05) return `Closes none of the differences in ${what} today; they carry over.`
  if (share > 0.95) return `Closes all of the differences in ${what} today.`
  return `Closes ${sayPart(share)} of the differences in ${what} today; the rest carries over${gently}.`
}
