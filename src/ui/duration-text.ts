import type { Seconds } from '#common/time'

/** How long something takes: "45 s" and "90 s" under two minutes, else "5 min" or "5 min 30 s". */
export function durationText(seconds: Seconds): string {
  const whole = Math.round(seconds)
  if (whole < 120) return `${whole} s`
  const rest = whole % 60
  const minutes = `${Math.floor(whole / 60)} min`
  return rest === 0 ? minutes : `${minutes} ${rest} s`
}
