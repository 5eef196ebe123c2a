import type { AreaShape, DesignRound } from '#practice/design'

/** How many children an area takes at a time. */
export function placesOf({ attack, defend, keep }: AreaShape): number {
  return attack + defend + keep
}

/** Places of all areas of a turn together. */
export function placesOfAll(stations: readonly AreaShape[]): AreaShape & { readonly all: number } {
  const sum = { attack: 0, defend: 0, keep: 0, all: 0 }
  for (const shape of stations) {
    sum.attack += shape.attack
    sum.defend += shape.defend
    sum.keep += shape.keep
    sum.all += placesOf(shape)
  }
  return sum
}

/** The rounds that rise: all but the free game, which takes whoever is there. */
export function roundsThatRise(rounds: readonly DesignRound[]): readonly DesignRound[] {
  return rounds.filter(({ isFreeGame }) => isFreeGame !== true)
}
