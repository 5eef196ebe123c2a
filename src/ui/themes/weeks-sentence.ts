import type { Day } from '#common/time'
import { formatDay } from '#ui/format-day'
import { counted } from '#ui/plural'

/** "This term has 26 weeks: week 1 begins on 1 Jan, week 13 on 23 Mar, week 26 on 22 Jun." */
export function weeksSentence(weekDays: readonly Day[]): string {
  const last = weekDays.length
  const shown = [...new Set([1, Math.ceil(last / 2), last])]
  const parts = shown.flatMap((week) => {
    const day = weekDays[week - 1]
    return day ? [`week ${week} ${week === 1 ? 'begins on ' : 'on '}${formatDay(day, 'short')}`] : []
  })
  return `This term has ${counted(last, 'week')}: ${parts.join(', ')}.`
}
