/** How a share stands to an even one, decided from seconds before anything is rounded. */
export type Standing = 'within' | 'short' | 'over'

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
export function judgedDifferenceText(minutes: number, standing: Standing): string {
  if (standing !== 'within') return differenceText(minutes)
  return minutes === 0 ? 'about even' : `about even, ${differenceText(minutes)}`
}
