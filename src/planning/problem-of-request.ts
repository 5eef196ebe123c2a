import type { PlanLock, PlannedPlayer, PlanRequest } from '#planning/practice-plan'
import { isInSides, sideListsOf } from '#planning/side-lists'
import { type TurnFrame, turnFrames } from '#planning/turn-frames'
import { gentleGaps } from '#rotation/gentle-gaps'
import { away, resting, roleOf, seatPlace, stationOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import type { FixedPlace, RotationPlayer, RotationProblem, RotationRound } from '#rotation/problem'

/**
 * The rotation that a plan asks for: what its rounds, players, rules, pairs and locks come to. Players and turns stand
 * in its lists in the same order as in the request. Where catching up is to be gentle, of each gap only as much is in it as
 * this practice is asked to close. Locks of players who are not expected are left out.
 */
export function problemOfRequest(request: PlanRequest): RotationProblem {
  const frames = turnFrames(request.design.rounds)
  const at = new Map(request.players.map(({ playerId }, index) => [playerId, index]))
  const pairs = (list: PlanRequest['apart']) =>
    list.flatMap(([one, other]) => {
      const [mine, theirs] = [at.get(one), at.get(other)]
      return mine === undefined || theirs === undefined ? [] : [[mine, theirs] as const]
    })
  const { roundOf, rounds } = roundsOf(request, frames)
  const problem: RotationProblem = {
    players: request.players.map((player) => rotationPlayer(player, frames.length)),
    rounds,
    turns: frames.map((frame, turn) => ({
      round: roundOf[turn] ?? 0,
      seconds: frame.seconds,
      stations: frame.stations,
    })),
    restLimit: request.rules.restLimit,
    apart: pairs(request.apart),
    together: pairs(request.together),
    fixed: fixedPlaces(request.locks, { frames, at }),
  }
  return request.rules.isGentle ? gentleGaps(problem).problem : problem
}

function rotationPlayer(player: PlannedPlayer, turnCount: number): RotationPlayer {
  const { agreed } = player
  return {
    id: player.playerId,
    keeps: player.keeps && !player.notInGoal,
    present: Array.from({ length: turnCount }, (_, turn) => isThereFor(player, turn + 1)),
    gap: player.gap,
    mostTurns: player.mostTurns,
    restsAfterTurn: player.waitsAfterEachTurn,
    ...(agreed?.dueShare === undefined ? {} : { dueShare: agreed.dueShare }),
    ...(agreed?.neverWaitsAlone ? { neverRestsAlone: true } : {}),
  }
}

/** Whether a player is expected for a turn, counted from 1. */
export function isThereFor(player: Pick<PlannedPlayer, 'present'>, turn: number): boolean {
  return player.present.some(([from, to]) => from <= turn && turn <= to)
}

/** Rounds as the engine knows them: the halves of a free game are two, since sides change over between them. */
function roundsOf(request: PlanRequest, frames: readonly TurnFrame[]) {
  const rounds: RotationRound[] = []
  const roundOf = frames.map((frame, turn) => {
    const before = frames[turn - 1]
    if (before?.round !== frame.round || before.half !== frame.half) {
      const round = request.design.rounds[frame.round]
      const sides = sideListsOf(request, frame)
      rounds.push({
        id: frame.half === 1 ? `${frame.round + 1}b` : `${frame.round + 1}`,
        turnSeconds: frame.seconds,
        keepersStay: (round?.keepersStay ?? false) && frame.stations.every(({ keep }) => keep <= 1),
        sides,
        // Where one side is smaller somebody goes twice, but not twice running.
        isSpread: isInSides(request),
      })
    }
    return rounds.length - 1
  })
  return { roundOf, rounds }
}

/** A lock in one half of a free game is one in the other, with the roles swapped. */
function fixedPlaces(
  locks: readonly PlanLock[],
  of: { readonly frames: readonly TurnFrame[]; readonly at: ReadonlyMap<string, number> },
): readonly FixedPlace[] {
  const fixed = new Map<string, FixedPlace>()
  for (const { turn, playerId, place } of locks) {
    const player = of.at.get(playerId)
    const frame = of.frames[turn - 1]
    if (player === undefined || !frame) continue
    const own = place === 'rest' ? resting : seatPlace(place.station - 1, place.role)
    fixed.set(`${turn} ${player}`, { turn: turn - 1, player, place: own })
    const other = otherHalf(of.frames, turn - 1)
    if (other !== null && !fixed.has(`${other + 1} ${player}`))
      fixed.set(`${other + 1} ${player}`, { turn: other, player, place: mirrored(own) })
  }
  return [...fixed.values()]
}

/** The turn that is the other half of the same free game; null where there is none. Turns from 0. */
export function otherHalf(frames: readonly TurnFrame[], turn: number): number | null {
  const half = frames[turn]?.half ?? null
  if (half === null) return null
  const other = half === 0 ? turn + 1 : turn - 1
  const there = frames[other]
  return there?.round === frames[turn]?.round && there?.half === 1 - half ? other : null
}

/** Whether the halves of a free game, turns from 0, mirror each other: nobody comes, goes, or has to wait in between. */
export function isMirrored(request: Pick<PlanRequest, 'players'>, first: number, second: number): boolean {
  return request.players.every((player) => {
    const isThere = isThereFor(player, first + 1)
    return isThere === isThereFor(player, second + 1) && !(isThere && player.waitsAfterEachTurn)
  })
}

/**
 * A timetable with the second half of each free game as the first one has it, the roles swapped. `turns`: only in these;
 * left out: in all.
 */
export function withMirroredHalves(
  plan: RotationPlan,
  { request, turns }: { readonly request: PlanRequest; readonly turns?: readonly number[] },
): RotationPlan {
  const frames = turnFrames(request.design.rounds)
  return plan.map((places, turn) => {
    const isMeant = frames[turn]?.half === 1 && (turns?.includes(turn) ?? true)
    const first = isMeant ? otherHalf(frames, turn) : null
    const before = first === null ? undefined : plan[first]
    return first !== null && before && isMirrored(request, first, turn) ? before.map(mirrored) : places
  })
}

/** The place that somebody has in the other half of a free game. */
export function mirrored(place: number): number {
  if (place <= resting) return place
  const role = roleOf(place)
  if (role === 'attack') return seatPlace(stationOf(place), 'defend')
  return role === 'defend' ? seatPlace(stationOf(place), 'attack') : place
}

/**
 * The problem with its free games settled as they stand in a plan: everyone keeps the place of the first half, and in
 * the second has the same on the side that has changed over. A free game during which somebody comes or goes, or who
 * waits after each turn would have to, is left open: its halves cannot mirror each other then.
 */
export function withFreeGames(
  problem: RotationProblem,
  { request, plan }: { readonly request: PlanRequest; readonly plan: RotationPlan },
): RotationProblem {
  const frames = turnFrames(request.design.rounds)
  const settled = frames.flatMap((frame, turn) => {
    const second = frame.half === 0 ? otherHalf(frames, turn) : null
    if (second === null) return []
    const places = plan[turn] ?? []
    if (!isMirrored(request, turn, second)) return []
    return places.flatMap((place, player): FixedPlace[] =>
      place === away
        ? []
        : [
            { turn, player, place },
            { turn: second, player, place: mirrored(place) },
          ],
    )
  })
  if (settled.length === 0) return problem
  const turns = new Set(settled.map(({ turn }) => turn))
  return { ...problem, fixed: [...problem.fixed.filter(({ turn }) => !turns.has(turn)), ...settled] }
}
