import type { Seconds } from '#common/time'
import { type Line, lines, type Spell } from '#match/match'

/** Time in each line. */
export type LineSeconds = Readonly<Record<Line, Seconds>>

export const noLineSeconds: LineSeconds = { keeper: 0, back: 0, middle: 0, forward: 0 }

export function lineSecondsOf(spells: readonly Spell[]): LineSeconds {
  const seconds: Record<Line, Seconds> = { ...noLineSeconds }
  for (const { line, start, end } of spells) seconds[line] += end - start
  return seconds
}

export function addLineSeconds(one: LineSeconds, other: LineSeconds): LineSeconds {
  const sums: Record<Line, Seconds> = { ...one }
  for (const line of lines) sums[line] += other[line]
  return sums
}
