import type { ColumnSummary } from '#practice/column-summary'

/** The same read out: "two areas of 3 against 2 with a keeper" is said as numbers and words. */
export function summaryWords({ shapes, waiting, otherTurns }: ColumnSummary): string {
  if (shapes.length === 0) return 'nobody marked yet'
  const numbers = shapes.map(
    ({ attack, defend, keep }) => `${attack} against ${defend}${keep > 0 ? `, ${keep} in goal` : ''}`,
  )
  const others = otherTurns > 0 ? `; other numbers in ${otherTurns}, as somebody came or left` : ''
  return `${[...new Set(numbers)].join('; ')}${shapes.length > 1 ? `, ${shapes.length} areas` : ''}; ${waiting} waiting${others}`
}
