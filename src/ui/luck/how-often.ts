const often = [
  [0.95, 'nearly every time'],
  [0.85, 'about nine times in ten'],
  [0.71, 'about three times in four'],
  [0.59, 'about two times in three'],
  [0.42, 'about every second time'],
] as const

const rounded = [3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 100, 200]

/** A chance as people say it: "about one time in three". */
export function howOften(chance: number): string {
  const said = often.find(([from]) => chance >= from)
  if (said) return said[1]
  if (chance < 1 / 300) return 'less than one time in three hundred'
  // The nearest in proportion.
  const off = (times: number) => Math.abs(Math.log(times * chance))
  const times = rounded.reduce((best, one) => (off(one) < off(best) ? one : best))
  return `about one time in ${numberWords[times] ?? times}`
}

const numberWords: Readonly<Record<number, string>> = {
  3: 'three',
  4: 'four',
  5: 'five',
  6: 'six',
  8: 'eight',
  10: 'ten',
  12: 'twelve',
  20: 'twenty',
  100: 'a hundred',
  200: 'two hundred',
}
