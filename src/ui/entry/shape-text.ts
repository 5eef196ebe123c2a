import type { ColumnSummary } from '#practice/column-summary'
import type { AreaShape } from '#practice/design'

/** Three attackers, two defenders and a keeper as coaches write it: "3v2+1". */
export function shapeText({ attack, defend, keep }: AreaShape): string {
  return `${attack}v${defend}${keep > 0 ? `+${keep}` : ''}`
}

/** The numbers of all areas: "3v2+1", "2 × 3v2+1", or each where they differ. */
export function shapesText(shapes: readonly AreaShape[]): string {
  const texts = shapes.map(shapeText)
  const [first] = texts
  if (first === undefined) return ''
  if (texts.length === 1) return first
  return texts.every((text) => text === first) ? `${texts.length} × ${first}` : texts.join(', ')
}

/** The same read out: "two areas of 3 against 2 with a keeper" is said as numbers and words. */
export function summaryWords({ shapes, waiting, otherTurns }: ColumnSummary): string {
  if (shapes.length === 0) return 'nobody marked yet'
  const numbers = shapes.map(
    ({ attack, defend, keep }) => `${attack} against ${defend}${keep > 0 ? `, ${keep} in goal` : ''}`,
  )
  const others = otherTurns > 0 ? `; other numbers in ${otherTurns}, as somebody came or left` : ''
  return `${[...new Set(numbers)].join('; ')}${shapes.length > 1 ? `, ${shapes.length} areas` : ''}; ${waiting} waiting${others}`
}
