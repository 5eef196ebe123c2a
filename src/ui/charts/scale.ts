/** Marks of an axis from 0 to at least `top`, at round distances, about `count` of them. */
export function roundMarks(top: number, count = 4): readonly number[] {
  const step = roundStep(top / count)
  const marks: number[] = []
  for (let mark = 0; mark < top + step; mark += step) marks.push(mark)
  return marks
}

/** The least of 1, 2, 5, 10, 20, 50 … that is not below `size`. */
export function roundStep(size: number): number {
  if (!(size > 0)) return 1
  const power = 10 ** Math.floor(Math.log10(size))
  return ([1, 2, 5].find((digit) => digit * power >= size) ?? 10) * power
}
