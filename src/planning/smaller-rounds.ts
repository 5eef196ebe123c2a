import { changedOver } from '#planning/free-game-for-all'
import type { PlanRequest } from '#planning/practice-plan'
import { isThereFor, problemOfRequest } from '#planning/problem-of-request'
import { turnFrames } from '#planning/turn-frames'
import type { WayOut } from '#planning/way-out'
import type { AreaShape } from '#practice/design'
import { type ShapeProposal, smallerShapesOf, stretchRound } from '#practice/stretch-round'
import { mayTakeIn } from '#rotation/may-take'
import { seatTurn } from '#rotation/seat-turn'
import { withStations } from '#rotation/stretch-turns'

/** How many ways are offered. */
export const mostWays = 3

/** Every round that is too large made smaller; the first way takes the nearest size of each, the next the next. */
export function smallerRounds(request: PlanRequest): readonly WayOut[] {
  const { rounds } = request.design
  const found = rounds.map((_, index) => smallerSizes(request, index))
  const count = Math.max(0, ...found.map((proposals) => proposals.length))
  return Array.from({ length: Math.min(count, mostWays) }, (_, choice) => {
    const chosen = found.map((proposals) => proposals[Math.min(choice, proposals.length - 1)])
    return {
      sentences: chosen.flatMap((proposal, index) =>
        proposal ? [`Round ${index + 1}, ${rounds[index]?.title}: ${proposal.sentence}`] : [],
      ),
      request: withRounds(
        request,
        rounds.map((round, index) => {
          const proposal = chosen[index]
          return proposal ? stretchRound(round, proposal) : round
        }),
      ),
    }
  })
}

/** Sizes in which every turn of a round can be filled, the nearest first; none where it can be as it is. */
function smallerSizes(request: PlanRequest, index: number): readonly ShapeProposal[] {
  const problem = problemOfRequest(request)
  const mayTake = mayTakeIn(problem)
  const frames = turnFrames(request.design.rounds)
  const turns = [...frames.keys()].filter((turn) => frames[turn]?.round === index)
  const canBeFilled = (stations: readonly AreaShape[]) =>
    turns.every((turn) => {
      const shape = frames[turn]?.half === 1 ? stations.map(changedOver) : stations
      return seatTurn(withStations(problem, [turn], shape), mayTake, { turn }) !== null
    })
  const drawn = request.design.rounds[index]?.stations ?? []
  if (canBeFilled(drawn)) return []
  // Sides and pairs apart can stand against the nearest sizes, so that more are looked at than are offered.
  return smallerShapesOf(drawn, turnoutOf(request, index), mostSizes)
    .filter(({ stations }) => canBeFilled(stations))
    .slice(0, mostWays)
}

const mostSizes = 12

/** The fewest who are there, and the fewest of them who may keep goal, in any turn of a round. */
function turnoutOf(
  request: PlanRequest,
  round: number,
): { readonly present: number; readonly keepersAble: number } {
  const turns = turnFrames(request.design.rounds).flatMap((frame, turn) =>
    frame.round === round ? [turn] : [],
  )
  const there = turns.map((turn) => request.players.filter((player) => isThereFor(player, turn + 1)))
  const fewest = (counts: readonly number[]) => (counts.length > 0 ? Math.min(...counts) : 0)
  return {
    present: fewest(there.map((players) => players.length)),
    keepersAble: fewest(
      there.map((players) => players.filter(({ keeps, notInGoal }) => keeps && !notInGoal).length),
    ),
  }
}

/** Locks of places that a changed round no longer has are let go with it. */
export function withRounds(request: PlanRequest, rounds: PlanRequest['design']['rounds']): PlanRequest {
  const next = { ...request, design: { ...request.design, rounds } }
  const frames = turnFrames(rounds)
  return {
    ...next,
    locks: request.locks.filter(
      ({ turn, place }) =>
        place === 'rest' || (frames[turn - 1]?.stations[place.station - 1]?.[place.role] ?? 0) > 0,
    ),
  }
}
