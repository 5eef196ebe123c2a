import type { AheadProblem } from '#ahead/problem'
import { formatDay } from '#ui/format-day'

/** A practice to come by its day: "Thu, 11 Jun 2026". */
export function practiceDay({ practices }: Pick<AheadProblem, 'practices'>, practice: number): string {
  const own = practices[practice]
  return own ? formatDay(own.day) : ''
}
