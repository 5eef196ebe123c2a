import type { Seconds } from '#common/time'

/** "12:30": minutes and seconds of playing time. */
export function sayClock(seconds: Seconds): string {
  const whole = Math.round(seconds)
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`
}

/** "5 minutes"; with seconds left over "12:30 minutes". */
export function sayTime(seconds: Seconds): string {
  const whole = Math.round(seconds)
  return whole % 60 === 0
    ? `${whole / 60} ${whole === 60 ? 'minute' : 'minutes'}`
    : `${sayClock(whole)} minutes`
}
