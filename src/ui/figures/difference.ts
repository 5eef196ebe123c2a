import type { Status } from '#fairness/status'

/** A difference in whole minutes, signed as in a table: "−12", "+3", "0". */
export function signedMinutes(minutes: number): string {
  if (minutes === 0) return '0'
  return minutes < 0 ? `−${-minutes}` : `+${minutes}`
}

/** A difference in words: "12 min less", "3 min more", "the same". */
export function differenceText(minutes: number): string {
  if (minutes === 0) return 'the same'
  return minutes < 0 ? `${-minutes} min less` : `${minutes} min more`
}

/** With the judgement: "about even, 3 min more", "12 min less". */
export function judgedDifferenceText(minutes: number, status: Status): string {
  if (status !== 'within') return differenceText(minutes)
  return minutes === 0 ? 'about even' : `about even, ${differenceText(minutes)}`
}
