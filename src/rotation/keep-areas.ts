import { cheapestMatching } from '#rotation/cheapest-matching'
import { resting, roleOf, seatPlace, stationOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem, StationSeats } from '#rotation/problem'

/**
 * The same plan with stations that are alike numbered so that as few as possible walk from one to another between two
 * turns of a round. Nobody's role, side or team-mates change, so every value of the plan and every rule holds as before.
 * Stations where a place is held fast, or a goalkeeper stays, keep their number. `from`: the first turn that may change.
 */
export function keepAreas(problem: RotationProblem, plan: RotationPlan, from = 0): RotationPlan {
  const kept = [...plan.slice(0, from)]
  for (let turn = from; turn < plan.length; turn += 1) {
    const places = plan[turn] ?? []
    const before = kept[turn - 1]
    const isSameRound = problem.turns[turn - 1]?.round === problem.turns[turn]?.round
    kept.push(before && isSameRound ? renumbered(places, before, groupsOfAlike(problem, turn)) : places)
  }
  return kept
}

/** How many have a place in two turns running of one round, and walk to another station in between. */
export function walksBetween(problem: RotationProblem, plan: RotationPlan): number {
  return plan.reduce((sum, places, turn) => {
    const before = plan[turn - 1]
    if (!before || problem.turns[turn - 1]?.round !== problem.turns[turn]?.round) return sum
    const isWalk = (place: number, player: number) => {
      const old = before[player] ?? resting
      return place > resting && old > resting && stationOf(old) !== stationOf(place)
    }
    return sum + places.filter(isWalk).length
  }, 0)
}

/** Stations of a turn that may change their numbers among each other; those alone of their kind are left out. */
function groupsOfAlike(problem: RotationProblem, turn: number): readonly (readonly number[])[] {
  const own = problem.turns[turn]
  const held = new Set(
    problem.fixed.filter((fixed) => fixed.turn === turn).map(({ place }) => stationOf(place)),
  )
  const keepersStay = problem.rounds[own?.round ?? -1]?.keepersStay ?? false
  const groups = new Map<string, number[]>()
  own?.stations.forEach((seats: StationSeats, station) => {
    if (held.has(station) || (keepersStay && seats.keep > 0)) return
    const key = `${seats.attack} ${seats.defend} ${seats.keep}`
    groups.set(key, [...(groups.get(key) ?? []), station])
  })
  return [...groups.values()].filter((group) => group.length > 1)
}

/** Staying counts most, staying in one's role breaks ties, and else a station keeps its number. */
const weights = { stays: 8, staysInRole: 2, keepsNumber: 1 }

function renumbered(
  places: readonly number[],
  before: readonly number[],
  groups: readonly (readonly number[])[],
): readonly number[] {
  const numbers = new Map<number, number>()
  for (const group of groups) {
    const costs = new Float64Array(group.length ** 2)
    group.forEach((own, row) => {
      group.forEach((number, column) => {
        costs[row * group.length + column] = own === number ? -weights.keepsNumber : 0
      })
    })
    places.forEach((place, player) => {
      const old = before[player] ?? resting
      if (place <= resting || old <= resting) return
      const [row, column] = [group.indexOf(stationOf(place)), group.indexOf(stationOf(old))]
      if (row < 0 || column < 0) return
      const index = row * group.length + column
      const worth = weights.stays + (roleOf(place) === roleOf(old) ? weights.staysInRole : 0)
      costs[index] = (costs[index] as number) - worth
    })
    const columns = cheapestMatching(group.length, costs)
    group.forEach((own, row) => {
      numbers.set(own, group[columns[row] as number] ?? own)
    })
  }
  return places.map((place) => {
    const role = roleOf(place)
    if (place <= resting || role === 'rest') return place
    return seatPlace(numbers.get(stationOf(place)) ?? stationOf(place), role)
  })
}
