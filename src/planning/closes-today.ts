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
    const share = closed / all
    const rest = share > 0.95 ? '' : isGentle ? '; the rest carries over, gently' : '; the rest carries over'
    return [`Closes ${sayPart(share)} of the differences in ${doing[role]} today${rest}.`]
  })
}
