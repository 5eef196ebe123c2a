import { daysLater } from '#common/days-later'
import type { Day } from '#common/time'
import type { KeepsChange } from '#squad/keeps-change'
import { formatDay } from '#ui/format-day'

const may = 'may be put in goal'
const not = 'asks not to be put in goal'

/**
 * Whether a player may be put in goal, and from when on, newest first; days on which nothing became otherwise are left
 * out. `keepsChanges`: the player's own by day; of one day the later written counts.
 */
export function keepsLines({
  keeps,
  keepsChanges,
}: {
  readonly keeps: boolean
  readonly keepsChanges: readonly KeepsChange[]
}): readonly string[] {
  const atFirst = keepsChanges[0] ? !keepsChanges[0].keeps : keeps
  const standing = keepsChanges.filter((change, at) => keepsChanges[at + 1]?.day !== change.day)
  const turns = standing.filter((change, at) => change.keeps !== (standing[at - 1]?.keeps ?? atFirst))
  const first = turns.at(0)
  if (!first) return [atFirst ? 'May be put in goal.' : 'Asks not to be put in goal.']
  const lines = turns.map(({ day, keeps: says }) => `From ${formatDay(day)} on: ${says ? may : not}.`)
  return [...lines.toReversed(), `Before ${formatDay(first.day)}: ${atFirst ? may : not}.`]
}

/** "since Mon, 1 Sept 2025" or "from … to …". */
export function memberText({
  firstDay,
  lastDay,
  today,
}: {
  readonly firstDay: Day
  readonly lastDay: Day | null
  readonly today: Day
}): string {
  if (lastDay !== null) return `from ${formatDay(firstDay)} to ${formatDay(lastDay)}`
  return `${firstDay > today ? 'from' : 'since'} ${formatDay(firstDay)}`
}

/** The day that a form of an end begins with: yesterday's practice was the last, or the first day if that is later. */
export function lastDayToOffer({ firstDay, today }: { readonly firstDay: Day; readonly today: Day }): Day {
  const yesterday = daysLater(today, -1)
  return yesterday < firstDay ? firstDay : yesterday
}
