import type { AreaShape, DesignRound } from '#practice/design'
import { durationText } from '#ui/duration-text'

/** "3v2 and a goalkeeper". */
export function shapeWords({ attack, defend, keep }: AreaShape): string {
  const keepers = keep === 0 ? '' : keep === 1 ? ' and a goalkeeper' : ` and ${keep} in goal`
  return `${attack}v${defend}${keepers}`
}

/** Areas of one size are said together: "2v1 in three areas" as "3 × 2v1". */
export function areasWords(stations: readonly AreaShape[]): string {
  const counts = new Map<string, number>()
  for (const shape of stations) counts.set(shapeWords(shape), (counts.get(shapeWords(shape)) ?? 0) + 1)
  return [...counts].map(([shape, count]) => (count === 1 ? shape : `${count} × ${shape}`)).join(', ')
}

/** "6 turns of 40 s". */
export function turnsWords({ turnCount, turnSeconds, isUntilDead }: DesignRound): string {
  const length = isUntilDead ? `about ${durationText(turnSeconds)}` : durationText(turnSeconds)
  return `${turnCount} ${turnCount === 1 ? 'turn' : 'turns'} of ${length}`
}
