import type { Seconds } from '#common/time'

/** Minutes and seconds of the practice, "7:05"; from an hour on the minutes go on counting. */
export function clockWords(second: Seconds): string {
  const whole = Math.max(0, Math.floor(second))
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`
}
