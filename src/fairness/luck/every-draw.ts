import { groupBy } from '#common/group-by'
import { type Draw, goalTurns, luckRoles, openPlaces, type PlaceTurns } from '#fairness/luck/draw'

/** How many ways there are to deal a draw, places that give the same taken as one; each is as likely as any other. */
export function countDraws({ blocks }: Draw): number {
  return blocks.reduce((all, block) => {
    const keepers = ways(block.able.length, block.keepers.length)
    return block.turns.reduce((so, turn) => so * waysToDeal(openPlaces(block, turn)), all * keepers)
  }, 1)
}

/** Visits every way to deal, with the turns of every player and role (player × 4 + role). For draws of few ways. */
export function visitDraws(draw: Draw, visit: (turns: Float64Array) => void): void {
  const turns = new Float64Array(draw.players.length * luckRoles.length)
  const give = (player: number, place: PlaceTurns, sign: 1 | -1) =>
    place.forEach((count, role) => {
      const at = player * luckRoles.length + role
      turns[at] = (turns[at] ?? 0) + sign * count
    })
  const deal = (players: readonly number[], places: readonly PlaceTurns[], then: () => void): void => {
    const [player, ...others] = players
    if (player === undefined) {
      then()
      return
    }
    const tried = new Set<string>()
    places.forEach((place, at) => {
      if (tried.has(place.join())) return
      tried.add(place.join())
      give(player, place, 1)
      deal(others, places.toSpliced(at, 1), then)
      give(player, place, -1)
    })
  }
  const goOn = (at: number): void => {
    const block = draw.blocks[at]
    if (!block) {
      visit(turns)
      return
    }
    for (const keepers of subsets(block.able, block.keepers.length)) {
      const goThrough = (turnAt: number): void => {
        const turn = block.turns[turnAt]
        if (!turn) {
          goOn(at + 1)
          return
        }
        const goal: PlaceTurns = [0, 0, goalTurns(turn), 0]
        for (const keeper of keepers) give(keeper, goal, 1)
        deal(
          turn.players.filter((player) => !keepers.includes(player)),
          openPlaces(block, turn),
          () => goThrough(turnAt + 1),
        )
        for (const keeper of keepers) give(keeper, goal, -1)
      }
      goThrough(0)
    }
  }
  goOn(0)
}

function subsets(of: readonly number[], size: number): readonly (readonly number[])[] {
  if (size === 0) return [[]]
  return of.flatMap((one, at) => subsets(of.slice(at + 1), size - 1).map((rest) => [one, ...rest]))
}

/** n over k. */
function ways(of: number, size: number): number {
  let count = 1
  for (let at = 0; at < size; at++) count = (count * (of - at)) / (at + 1)
  return Math.round(count)
}

function waysToDeal(places: readonly PlaceTurns[]): number {
  let [left, count] = [places.length, 1]
  for (const { length } of groupBy(places, (place) => place.join()).values()) {
    count *= ways(left, length)
    left -= length
  }
  return count
}
