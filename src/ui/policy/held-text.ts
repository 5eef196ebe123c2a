import { type Day, isoWeekOf } from '#common/time'
import type { PolicyHold } from '#squad/policy-history'
import { formatDay } from '#ui/format-day'

/** The days and weeks on which rules held: "Mon, 1 Sept 2025 to Sun, 4 Jan 2026 (week 36 of 2025 to week 1 of 2026)". */
export function heldText({ from, to, state }: Omit<PolicyHold, 'version'>): string {
  if (state === 'replacedSameDay') return `made for ${formatDay(from)}, replaced for the same day`
  if (to === null) return `from ${formatDay(from)} on (from ${weekText(from)})`
  return `${formatDay(from)} to ${formatDay(to)} (${weekText(from)} to ${weekText(to)})`
}

function weekText(day: Day): string {
  const [year, week] = isoWeekOf(day).split('-W')
  return `week ${Number(week)} of ${year}`
}
