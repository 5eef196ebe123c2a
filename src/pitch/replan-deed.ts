import { InvariantError } from '#common/result'
import type { Deed } from '#pitch/pitch-event'
import type { PlannedTurn, PlanRequest } from '#planning/practice-plan'
import { turnFrames } from '#planning/turn-frames'
import type { SeatRole } from '#practice/turn'
import { seatPlace } from '#rotation/place'
import type { Replanned } from '#rotation/replan'

/** The turns of a rotation from one on, as they are told to all phones. */
export function replanDeed(
  request: PlanRequest,
  made: Pick<Replanned, 'problem' | 'plan'>,
  say: { readonly fromTurn: number; readonly sentence: string },
): Extract<Deed, { kind: 'replan' }> {
  const frames = turnFrames(request.design.rounds)
  const turns = made.plan.slice(say.fromTurn).map((places, step): PlannedTurn => {
    const index = say.fromTurn + step
    const frame = frames[index]
    const seats = made.problem.turns[index]?.stations
    if (!frame || !seats) throw new InvariantError('A rotation of another practice.', { index })
    const at = (station: number, role: SeatRole) =>
      request.players.flatMap(({ playerId }, player) =>
        places[player] === seatPlace(station, role) ? [playerId] : [],
      )
    return {
      round: frame.round,
      seconds: frame.seconds,
      gapSeconds: frame.gapSeconds,
      stations: seats.map((_, station) => ({
        attack: at(station, 'attack'),
        defend: at(station, 'defend'),
        keep: at(station, 'keep'),
      })),
    }
  })
  return { kind: 'replan', fromTurn: say.fromTurn, turns, sentence: say.sentence }
}
