import type { Day } from '#common/time'
import { formatDay, formatDays } from '#ui/format-day'

/** "Mon, 22 Jun 2026" for one day, "22 Jun – 23 Jun 2026" for more. */
export function spanText(span: { readonly firstDay: Day; readonly lastDay: Day }): string {
  return span.firstDay === span.lastDay ? formatDay(span.firstDay) : formatDays(span)
}
