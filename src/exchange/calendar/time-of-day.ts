const notSaid = /^(?:[-–—?]|tbc|tbd|tba|n\/?a)?$/i

/**
 * A time of day as `HH:MM`: 17:30, 17.30, 17h30, 1730, 5:30 pm, 5pm; of a span (17:30–18:45) its start. Null: none is
 * said; undefined: it cannot be read.
 */
export function timeOfDay(text: string): string | null | undefined {
  const cell = text.trim()
  if (notSaid.test(cell)) return null
  const start = cell.replace(/\s*(?:uhr|h)$/i, '').split(/\s*[-–—]\s*/)[0] ?? ''
  const clock =
    /^(\d{1,2})\s?[:.h]\s?(\d{2})(?::\d{2})?\s*([ap])?\.?(?:m\.?)?$/i.exec(start) ??
    /^(\d{2})(\d{2})()$/.exec(start) ??
    /^(\d{1,2})()\s*([ap])\.?m\.?$/i.exec(start)
  if (!clock) return undefined
  const half = (clock[3] ?? '').toLowerCase()
  const said = Number(clock[1])
  if (half !== '' && (said < 1 || said > 12)) return undefined
  const hour = half === '' ? said : (said % 12) + (half === 'p' ? 12 : 0)
  const minute = Number(clock[2] || 0)
  if (hour > 23 || minute > 59) return undefined
  return `${String(hour).padStart(2, '0')}:${String(minute).padStart(2, '0')}`
}

/** The time that stands behind a date in its cell (`2026-09-05 10:30`), if there is one. */
export function timeBehindDate(text: string): string | null {
  const behind = /[T ](\d{1,2}:\d{2}(?::\d{2}(?:\.\d+)?)?(?:\s?[ap]m)?)Z?$/i.exec(text.trim())?.[1]
  const time = behind === undefined ? null : timeOfDay(behind.replace(/\.\d+$/, ''))
  // Spreadsheets write midnight behind every date that has no time.
  return time === undefined || time === '00:00' ? null : time
}
