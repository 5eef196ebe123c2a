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
