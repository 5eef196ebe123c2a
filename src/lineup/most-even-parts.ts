import type { Seconds } from '#common/time'

/** What each is due, and the least and most that it may get. */
export type PartAsked = { readonly due: number; readonly least: Seconds; readonly most: Seconds }

/**
 * The least sum of (due − part)² when `total` is shared out in whole units, each part within its ends. Unit by unit to
 * whoever it serves best: the squares grow evenly, so no other order does better. Null where the ends leave no way.
 */
export function mostEvenParts(
  asked: readonly PartAsked[],
  { total, unit }: { readonly total: Seconds; readonly unit: Seconds },
): { readonly parts: readonly number[]; readonly unevenness: number } | null {
  const least = asked.map((part) => Math.ceil(part.least / unit))
  const most = asked.map((part) => Math.floor(part.most / unit))
  const parts = [...least]
  let left = Math.floor(total / unit) - least.reduce((sum, units) => sum + units, 0)
  if (left < 0 || least.some((units, index) => units > (most[index] ?? 0))) return null
  for (; left > 0; left -= 1) {
    let next = -1
    let widest = Number.NEGATIVE_INFINITY
    for (const [index, { due }] of asked.entries()) {
      const part = parts[index] ?? 0
      if (part >= (most[index] ?? 0)) continue
      const gap = due - part * unit
      if (gap > widest) {
        widest = gap
        next = index
      }
    }
    if (next < 0) return null
    parts[next] = (parts[next] ?? 0) + 1
  }
  const seconds = parts.map((units) => units * unit)
  const unevenness = asked.reduce((sum, { due }, index) => sum + (due - (seconds[index] ?? 0)) ** 2, 0)
  return { parts: seconds, unevenness }
}
