import type { MatchFormat } from '#match/format/match-format'

const ordinals = ['first', 'second', 'third', 'fourth'] as const
const parts: Readonly<Record<number, string>> = { 2: 'half', 3: 'third', 4: 'quarter' }

/** "the first half", "quarter 3", "game 5", "extra period 1": a period (from 0) by its name. */
export function periodName(
  period: number,
  { periodSeconds, isShortGames }: Pick<MatchFormat, 'periodSeconds' | 'isShortGames'>,
): string {
  const periods = periodSeconds.length
  if (period >= periods) return `extra period ${period - periods + 1}`
  if (isShortGames) return `game ${period + 1}`
  const part = parts[periods]
  if (part) return `the ${ordinals[period]} ${part}`
  return periods === 1 ? 'the match' : `period ${period + 1}`
}
