import type { Problem } from '#common/problem'
import type { AreaShape, DesignRound } from '#practice/design'
import { placesOf, placesOfAll } from '#practice/round-places'
import { shapesText } from '#practice/shape-text'

/** Whom a design is looked at for. */
export type Cast = {
  readonly squadName: string
  readonly children: number
  /** Of them, who may be put in goal. */
  readonly mayKeep: number
}

/**
 * What a squad cannot fill: more places at a time than it has children, and goals nobody may take. The free game takes
 * whoever is there. With each, what would work.
 */
export function castFaults(rounds: readonly DesignRound[], cast: Cast): readonly Problem[] {
  return rounds.flatMap((round, index) => {
    if (round.isFreeGame) return []
    const path = `rounds.${index}.stations`
    const { all, keep } = placesOfAll(round.stations)
    const problems: Problem[] = []
    if (all > cast.children)
      problems.push({
        path,
        message: `${all} places, and ${cast.squadName} has ${childrenText(cast.children)}; ${fewerPlaces(round.stations, cast.children)}`,
      })
    if (keep > cast.mayKeep)
      problems.push({
        path,
        message:
          cast.mayKeep === 0
            ? `${keep === 1 ? 'a place' : `${keep} places`} in goal, and nobody of ${cast.squadName} may keep goal; take the keeper out, and let a line or a small goal count`
            : `${keep} places in goal, and ${childrenText(cast.mayKeep)} of ${cast.squadName} may keep goal; ${cast.mayKeep} at most`,
      })
    return problems
  })
}

function childrenText(count: number): string {
  return count === 1 ? '1 child' : `${count} children`
}

/** The areas that fit, as many of them as come first; failing that, one small one. */
function fewerPlaces(stations: readonly AreaShape[], children: number): string {
  let left = children
  const fitting = stations.filter((shape) => {
    if (placesOf(shape) > left) return false
    left -= placesOf(shape)
    return true
  })
  if (fitting.length > 0) return `${shapesText(fitting)} would fit`
  return children >= 3 ? '2v1 would fit' : 'at least 3 children are needed for 2v1'
}
