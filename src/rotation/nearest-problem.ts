import { type ClashPart, findClash, without } from '#rotation/clash'
import { roleOf, stationOf } from '#rotation/place'
import { allSeatsOfTurn, type RotationProblem, type StationSeats, seatsOfTurn } from '#rotation/problem'

/** Which requirement of a clash is given up first: the one that binds least of the practice. */
const firstToGo = ['fixed', 'neverRestsAlone', 'apart', 'keepersStay', 'sides'] as const

/**
 * A request near to this one for which a rotation exists: seats taken out where there are too many, keeper seats where
 * too few may keep, and of requirements that clash one given up. What a single player agreed to is never given up: the
 * turn gets smaller instead. Null where that leads nowhere (nobody is there).
 */
export function nearestProblem(problem: RotationProblem): RotationProblem | null {
  let near = problem
  for (;;) {
    const clash = findClash(near)
    const [first] = clash
    if (!first) return near
    const next =
      first.rule === 'seats' || first.rule === 'keepers'
        ? smaller(near, clash)
        : first.rule === 'mostTurns' || first.rule === 'restsAfterTurn'
          ? smallerTurn(near, first.turn)
          : giveUp(near, clash)
    if (next === null) return null
    near = next
  }
}

function giveUp(problem: RotationProblem, clash: readonly ClashPart[]): RotationProblem | null {
  for (const rule of firstToGo) {
    const part = clash.find((candidate) => candidate.rule === rule)
    if (part) return without(problem, [part])
  }
  return null
}

/** A turn with one place less, as if one fewer were there. */
function smallerTurn(problem: RotationProblem, turn: number): RotationProblem | null {
  const own = problem.turns[turn]
  if (!own) return null
  const asked = allSeatsOfTurn(own)
  return smaller(problem, [{ rule: 'seats', turn, asked, there: asked - 1 }])
}

function smaller(problem: RotationProblem, clash: readonly ClashPart[]): RotationProblem | null {
  const turns = [...problem.turns]
  for (const part of clash) {
    const turn = turns[part.turn]
    if (!turn || (part.rule !== 'seats' && part.rule !== 'keepers')) continue
    const stations =
      part.rule === 'seats' ? fewerSeats(turn.stations, part.there) : fewerKeepers(turn.stations, part.there)
    turns[part.turn] = { ...turn, stations }
    if (allSeatsOfTurn({ ...turn, stations }) === 0) return null
  }
  const fixed = problem.fixed.filter(({ turn, place }) => {
    const role = roleOf(place)
    return role === 'rest' || (turns[turn]?.stations[stationOf(place)]?.[role] ?? 0) > 0
  })
  return { ...problem, turns, fixed }
}

/** The largest side shrinks first; where all are single, the last station goes. */
function fewerSeats(stations: readonly StationSeats[], most: number): readonly StationSeats[] {
  const left = stations.map((station) => ({ ...station }))
  const count = () => left.reduce((sum, seats) => sum + seats.attack + seats.defend + seats.keep, 0)
  while (count() > most && left.length > 0) {
    const largest = left
      .flatMap((seats) => [
        { seats, role: 'attack' as const },
        { seats, role: 'defend' as const },
      ])
      .reduce((best, side) => (side.seats[side.role] > best.seats[best.role] ? side : best))
    const excess = count() - most
    const size = largest.seats[largest.role]
    const next = Math.max(
      0,
      ...left.flatMap(({ attack, defend }) => [attack, defend]).filter((n) => n < size),
    )
    if (size > 1) largest.seats[largest.role] = size - Math.max(1, Math.min(excess, size - Math.max(next, 1)))
    else if (left.length > 1) left.pop()
    else if (left[0] && left[0].keep > 0) left[0].keep = Math.max(0, left[0].keep - excess)
    else if (size === 1) largest.seats[largest.role] = 0
  }
  return left
}

function fewerKeepers(stations: readonly StationSeats[], most: number): readonly StationSeats[] {
  let excess = seatsOfTurn({ round: 0, seconds: 0, stations }, 'keep') - most
  return [...stations]
    .reverse()
    .map((seats) => {
      const gone = Math.min(seats.keep, excess)
      excess -= gone
      return { ...seats, keep: seats.keep - gone }
    })
    .reverse()
}
