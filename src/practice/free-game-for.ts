import type { AreaShape, DesignRound } from '#practice/design'
import { placesOfAll } from '#practice/round-places'
import type { Turnout } from '#practice/stretch-areas'

/**
 * The free game for those who are there: nobody waits. As many goals as it is drawn with, as long as there is somebody
 * who may keep them and two are left to play; the others in two sides, one larger where they are odd. The sides swap roles
 * at half-time, so that being one more evens out.
 */
export function freeGameFor(round: DesignRound, { present, keepersAble }: Turnout): DesignRound {
  const games = Math.max(1, Math.min(round.stations.length, Math.floor(present / 2)))
  const drawn = placesOfAll(round.stations).keep
  const keepers = Math.max(0, Math.min(drawn, keepersAble, present - 2 * games))
  const goals = shareOut(keepers, games)
  const field = shareOut(Math.max(0, present - keepers), games)
  // The first game gets the keeper who is left over, the last the player: no game is two larger than another.
  const stations = goals.map((keep, game): AreaShape => {
    const players = field[games - 1 - game] ?? 0
    return { attack: Math.ceil(players / 2), defend: Math.floor(players / 2), keep }
  })
  return { ...round, stations }
}

/** As evenly as whole numbers allow, the larger parts first. */
function shareOut(count: number, parts: number): readonly number[] {
  return Array.from(
    { length: parts },
    (_, part) => Math.floor(count / parts) + (part < count % parts ? 1 : 0),
  )
}
