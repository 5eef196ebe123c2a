import type { AreaShape } from '#practice/design'

/**
 * A round's areas for the players who came: goals without a keeper where too few keep, fewer players in the last area
 * when too few came, and one more area, like the last, when many would wait.
 */
export function fitAreas(
  areas: readonly AreaShape[],
  came: { readonly present: number; readonly keepers: number },
): readonly AreaShape[] {
  let fitted = withKeepers(areas, came.keepers)
  while (seatsIn(fitted) > came.present) fitted = withOneFewer(fitted)
  const last = fitted.at(-1)
  if (!last) return fitted
  const more = { ...last, keep: 0 }
  const waiting = came.present - seatsIn(fitted)
  return waiting >= more.attack + more.defend + 2 ? [...fitted, more] : fitted
}

export function seatsIn(areas: readonly AreaShape[]): number {
  return areas.reduce((sum, area) => sum + area.attack + area.defend + area.keep, 0)
}

function withKeepers(areas: readonly AreaShape[], keepers: number): readonly AreaShape[] {
  let left = keepers
  return areas.map((area) => {
    const keep = Math.min(area.keep, left)
    left -= keep
    return { ...area, keep }
  })
}

function withOneFewer(areas: readonly AreaShape[]): readonly AreaShape[] {
  const before = areas.slice(0, -1)
  const last = areas.at(-1)
  if (!last || last.attack + last.defend <= 2) return before
  const fewer = last.attack > last.defend ? { attack: last.attack - 1 } : { defend: last.defend - 1 }
  return [...before, { ...last, ...fewer }]
}
