import type { Seconds } from '#common/time'

/** "12:30": minutes and seconds of playing time. */
export function sayClock(seconds: Seconds): string {
  const whole = Math.round(seconds)
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`
}
