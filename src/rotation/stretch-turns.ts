import type { Turnout } from '#practice/stretch-areas'
import { largerShapesOf, type ShapeProposal, smallerShapesOf } from '#practice/stretch-round'
import { mayTakeIn } from '#rotation/may-take'
import { roleOf, stationOf } from '#rotation/place'
import { allSeatsOfTurn, presentAt, type RotationProblem, type StationSeats } from '#rotation/problem'
import { seatTurn } from '#rotation/seat-turn'

/** Turns with the same areas and as many there, and other shapes for them. */
export type TurnsToStretch = {
  readonly turns: readonly number[]
  readonly round: number
  readonly before: readonly StationSeats[]
  /** That can be filled, best first. */
  readonly proposals: readonly ShapeProposal[]
}

/** Which turns from one on cannot be filled, and in which smaller shapes they could. */
export function turnsToShrink(problem: RotationProblem, from: number): readonly TurnsToStretch[] {
  const mayTake = mayTakeIn(problem)
  return stretched(problem, {
    isMeant: (turn) => turn >= from && seatTurn(problem, mayTake, { turn }) === null,
    shapes: smallerShapesOf,
  })
}

/** In which larger shapes turns from one on would leave fewer waiting. Only where those who wait are more than half the places. */
export function turnsToGrow(problem: RotationProblem, from: number): readonly TurnsToStretch[] {
  const isCrowded = (turn: number) => {
    const own = problem.turns[turn]
    const places = own ? allSeatsOfTurn(own) : 0
    return presentAt(problem, turn).length - places > places / 2
  }
  const grown = stretched(problem, {
    isMeant: (turn) => turn >= from && isCrowded(turn),
    shapes: largerShapesOf,
  })
  return grown.filter(({ proposals }) => proposals.length > 0)
}

type Stretching = {
  readonly isMeant: (turn: number) => boolean
  readonly shapes: typeof smallerShapesOf
}

function stretched(problem: RotationProblem, { isMeant, shapes }: Stretching): readonly TurnsToStretch[] {
  const mayTake = mayTakeIn(problem)
  const groups = new Map<string, { turns: number[]; round: number; before: readonly StationSeats[] }>()
  problem.turns.forEach(({ round, stations }, turn) => {
    if (!isMeant(turn)) return
    const key = JSON.stringify([round, stations, turnoutOf(problem, turn)])
    const group = groups.get(key) ?? { turns: [], round, before: stations }
    group.turns.push(turn)
    groups.set(key, group)
  })
  return [...groups.values()].map((group) => {
    const canBeFilled = ({ stations }: ShapeProposal) =>
      group.turns.every(
        (turn) => seatTurn(withStations(problem, [turn], stations), mayTake, { turn }) !== null,
      )
    const [first = 0] = group.turns
    const all = shapes(group.before, turnoutOf(problem, first), mostShapes)
    return { ...group, proposals: all.filter(canBeFilled).slice(0, mostProposals) }
  })
}

/** Sides and pairs apart can stand against the best shapes, so that more are looked at than are shown. */
const mostShapes = 12
const mostProposals = 4

function turnoutOf(problem: RotationProblem, turn: number): Turnout {
  const present = presentAt(problem, turn)
  return {
    present: present.length,
    keepersAble: present.filter((player) => problem.players[player]?.keeps).length,
  }
}

/** The request with other areas in some turns. Places held fast that are no longer there are let go. */
export function withStations(
  problem: RotationProblem,
  turns: readonly number[],
  stations: readonly StationSeats[],
): RotationProblem {
  return {
    ...problem,
    turns: problem.turns.map((own, turn) => (turns.includes(turn) ? { ...own, stations } : own)),
    fixed: problem.fixed.filter(({ turn, place }) => {
      const role = roleOf(place)
      if (!turns.includes(turn) || role === 'rest') return true
      return (stations[stationOf(place)]?.[role] ?? 0) > 0
    }),
  }
}
