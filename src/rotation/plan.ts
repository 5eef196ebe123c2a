import { away, resting, seatPlace } from '#rotation/place'
import type { RotationProblem } from '#rotation/problem'

/** A timetable: for each turn, the place (place.ts) of each player. */
export type RotationPlan = readonly (readonly number[])[]

/** One turn of a plan with its players by station and role, in the order of the list of players. */
export type SeatedTurn = {
  readonly stations: readonly {
    readonly attack: readonly number[]
    readonly defend: readonly number[]
    readonly keep: readonly number[]
  }[]
  readonly rest: readonly number[]
}

export function seatedTurn(problem: RotationProblem, plan: RotationPlan, turn: number): SeatedTurn {
  const places = plan[turn] ?? []
  const at = (wanted: number) => places.flatMap((place, player) => (place === wanted ? [player] : []))
  return {
    stations: (problem.turns[turn]?.stations ?? []).map((_, station) => ({
      attack: at(seatPlace(station, 'attack')),
      defend: at(seatPlace(station, 'defend')),
      keep: at(seatPlace(station, 'keep')),
    })),
    rest: at(resting),
  }
}

/** How many turns the player has rested in a row when the plan ends; `before`: when it began. */
export function restAtEnd(plan: RotationPlan, player: number, before: number): number {
  return plan.reduce((run, places) => ((places[player] ?? away) === resting ? run + 1 : 0), before)
}
