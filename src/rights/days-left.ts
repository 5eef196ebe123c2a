import type { Day } from '#common/time'

/** How long there is until a day, in words: "3 days left", "due today", "2 days late". */
export function daysLeft(lastDay: Day, today: Day): { readonly isLate: boolean; readonly words: string } {
  const days = Math.round(
    (Date.parse(`${lastDay}T00:00:00Z`) - Date.parse(`${today}T00:00:00Z`)) / 86_400_000,
  )
  if (days === 0) return { isLate: false, words: 'due today' }
  const count = Math.abs(days)
  const counted = `${count} ${count === 1 ? 'day' : 'days'}`
  return days > 0 ? { isLate: false, words: `${counted} left` } : { isLate: true, words: `${counted} late` }
}
