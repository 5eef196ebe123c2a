import { type Day, isDay } from '#common/time'

/** Days kept at most; a dozen a year for a long while. */
const mostHolidays = 400

/** The days of a text, in order, each once: parted by spaces, commas or lines. Else what in it is no day. */
export function readHolidays(
  text: string,
): { readonly ok: true; readonly days: readonly Day[] } | { readonly ok: false; readonly wrong: string } {
  const parts = text.split(/[\s,;]+/).filter(Boolean)
  const wrong = parts.find((part) => !isDay(part) || part < '1990-01-01')
  if (wrong !== undefined) return { ok: false, wrong: wrong.slice(0, 40) }
  const days = [...new Set(parts)].toSorted()
  return days.length > mostHolidays ? { ok: false, wrong: `${days.length} days` } : { ok: true, days }
}
