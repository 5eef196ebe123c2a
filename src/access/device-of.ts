const programs: readonly (readonly [RegExp, string])[] = [
  [/Edg(e|A|iOS)?\//, 'Edge'],
  [/OPR\/|Opera/, 'Opera'],
  [/SamsungBrowser\//, 'Samsung Internet'],
  [/Firefox\/|FxiOS\//, 'Firefox'],
  [/Chrome\/|CriOS\//, 'Chrome'],
  [/Safari\//, 'Safari'],
]
const machines: readonly (readonly [RegExp, string])[] = [
  [/iPhone/, 'an iPhone'],
  [/iPad/, 'an iPad'],
  [/Android.*Mobile/, 'an Android phone'],
  [/Android/, 'an Android tablet'],
  [/Windows/, 'Windows'],
  [/CrOS/, 'a Chromebook'],
  [/Macintosh/, 'a Mac'],
  [/Linux/, 'Linux'],
]

/** A browser in plain words, by what it says of itself; most name others too, so the first that fits counts. */
export function deviceOf(userAgent: string | null): string {
  const of = (list: typeof programs) => list.find(([sign]) => sign.test(userAgent ?? ''))?.[1]
  const program = of(programs)
  const machine = of(machines)
  if (program && machine) return `${program} on ${machine}`
  return program ?? (machine ? `A browser on ${machine}` : 'A browser we do not know')
}
