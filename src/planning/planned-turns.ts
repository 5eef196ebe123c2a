import { accept, InvariantError, type Result, refuse } from '#common/result'
import type { PlannedTurn, PlanRequest, PracticePlan } from '#planning/practice-plan'
import { isThereFor } from '#planning/problem-of-request'
import { turnFrames } from '#planning/turn-frames'
import { seatRoles } from '#practice/turn'
import { away, resting, seatPlace } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'

/** A timetable as the turns of a plan. @throws InvariantError when it is one of another request. */
export function plannedTurns(request: PlanRequest, plan: RotationPlan): readonly PlannedTurn[] {
  const frames = turnFrames(request.design.rounds)
  if (plan.length !== frames.length)
    throw new InvariantError('A timetable of another request.', { turns: plan.length, asked: frames.length })
  return frames.map(({ round, seconds, gapSeconds, stations }, turn) => {
    const at = (station: number, role: (typeof seatRoles)[number]) =>
      request.players.flatMap(({ playerId }, player) =>
        plan[turn]?.[player] === seatPlace(station, role) ? [playerId] : [],
      )
    return {
      round,
      seconds,
      gapSeconds,
      stations: stations.map((_, station) => ({
        attack: at(station, 'attack'),
        defend: at(station, 'defend'),
        keep: at(station, 'keep'),
      })),
    }
  })
}

/** Why turns are no timetable of their plan: by turn, counted from 0. */
export type SeatFault = {
  readonly turn: number
  readonly why: 'unknownPlayer' | 'twoPlaces' | 'notThere'
  readonly playerId: string
}

/** The turns of a plan as a timetable: who is there and has no place waits. */
export function timetableOf(plan: Pick<PracticePlan, 'players' | 'turns'>): Result<RotationPlan, SeatFault> {
  const faults: SeatFault[] = []
  const at = new Map(plan.players.map(({ playerId }, index) => [playerId, index]))
  const timetable = plan.turns.map(({ stations }, turn) => {
    const places = plan.players.map((player): number => (isThereFor(player, turn + 1) ? resting : away))
    stations.forEach((station, index) => {
      for (const role of seatRoles)
        for (const playerId of station[role]) {
          const player = at.get(playerId)
          const held = player === undefined ? undefined : places[player]
          if (player === undefined) faults.push({ turn, why: 'unknownPlayer', playerId })
          else if (held === away) faults.push({ turn, why: 'notThere', playerId })
          else if (held !== resting) faults.push({ turn, why: 'twoPlaces', playerId })
          else places[player] = seatPlace(index, role)
        }
    })
    return places
  })
  return faults.length > 0 ? refuse(...faults) : accept(timetable)
}
