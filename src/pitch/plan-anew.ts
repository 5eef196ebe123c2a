import { placedIn } from '#pitch/changeover'
import type { KnownPlayer } from '#pitch/pitch-pack'
import { stateAt } from '#pitch/pitch-register'
import type { PitchState } from '#pitch/pitch-state'
import { requestNow } from '#pitch/request-now'
import { firstToCome, isPast } from '#pitch/was-to-leave'
import { changedOver, freeGameForAll, isFreeGameForAll } from '#planning/free-game-for-all'
import { agreedLetGo, type LetGo } from '#planning/let-go'
import type { PlanRequest, PracticePlan } from '#planning/practice-plan'
import { problemOfRequest, withFreeGames, withMirroredHalves } from '#planning/problem-of-request'
import { turnFrames } from '#planning/turn-frames'
import type { Station } from '#practice/turn'
import { away, resting, seatPlace } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem, StationSeats } from '#rotation/problem'
import { type Replan, type ReplanWish, replan } from '#rotation/replan'
import { withStations } from '#rotation/stretch-turns'
import type { PlayerId } from '#squad/player'

/** Areas that were chosen for what is left of a round, since those planned cannot be filled. */
export type ChosenShapes = ReadonlyMap<number, readonly StationSeats[]>

export type AnewWish = {
  readonly state: PitchState & { readonly plan: PracticePlan }
  /** As the phone knows them; for who may keep goal. */
  readonly known: readonly KnownPlayer[]
  /** Turns from the next on that are called already: only the places of those who left change in them. */
  readonly called: number
  readonly chosen?: ChosenShapes
  readonly tries: number
}

/** A new rotation for what is left of a practice, with what is needed to improve it. */
export type Anew = {
  /** The request as it is now: who is here, who is expected still. */
  readonly request: PlanRequest
  /** First turn that may have changed, from 0. */
  readonly fromTurn: number
  /** First turn that was not called. */
  readonly firstFree: number
  readonly outcome: Replan
  /** With whom something was agreed that no rotation for those who are here could keep. */
  readonly notKept: readonly PlayerId[]
}

/** Makes a new rotation for who is here now. Turns played, and the one being played, stay as they were. */
export function planAnew(wish: AnewWish): Anew {
  const { state } = wish
  const fromTurn = firstToCome(state)
  // The turn being played is one of those that are called.
  const called = Math.max(0, Math.min(wish.called - (state.live ? 1 : 0), state.turns.length - fromTurn))
  const firstFree = fromTurn + called
  const asked = requestNow(state, wish.known)
  const outcomeOf = (request: PlanRequest) => {
    const before = placesSoFar(wish, request)
    const problem = problemNow(wish, { request, before, fromTurn, firstFree })
    return withMirroredGames({ before, fromTurn, called, seed: 1, tries: wish.tries, problem }, request)
  }
  const first = { request: asked, outcome: outcomeOf(asked), playerIds: [] }
  const { request, outcome, playerIds } = first.outcome.kind === 'planned' ? first : letGo(first, outcomeOf)
  return { request, fromTurn, firstFree, outcome, notKept: playerIds }
}

type Found = LetGo & { readonly outcome: Replan }

/** What was agreed with single children is not worth smaller areas for all: it is let go where a rotation comes of that. */
function letGo(first: Found, outcomeOf: (request: PlanRequest) => Replan): Found {
  for (const step of agreedLetGo(first.request)) {
    const outcome = outcomeOf(step.request)
    if (outcome.kind === 'planned') return { ...step, outcome }
  }
  return first
}

/** Free games are settled in a second go: who has which place in the first half has it in the second, on the other side. */
function withMirroredGames(wish: ReplanWish, request: PlanRequest): Replan {
  const first = replan(wish)
  const found = first.kind === 'planned' ? first : first.smaller
  if (!found) return first
  const settled = withFreeGames(found.problem, { request, plan: found.plan })
  if (settled === found.problem) return first
  const again = replan({ ...wish, problem: settled, before: withMirroredHalves(found.plan, { request }) })
  if (again.kind !== 'planned') return first
  return first.kind === 'planned' ? again : { ...first, smaller: again }
}

/** The places of every turn: as it was played, as it is being played, or as the plan has it now. */
function placesSoFar({ state }: AnewWish, request: PlanRequest): RotationPlan {
  const played = new Map(state.played.map((turn) => [turn.index, turn]))
  const next = state.live?.index ?? state.next?.index ?? state.turns.length
  return state.turns.map((turn, index) => {
    const own = played.get(index)
    const live = state.live?.index === index ? state.live : null
    const stations = own?.parts[0].stations ?? live?.stations ?? (index < next ? [] : turn.stations)
    const seats = new Map(
      placedIn(stations).map(({ playerId, station, role }) => [playerId, seatPlace(station, role)]),
    )
    const second = own?.start ?? live?.start ?? null
    return request.players.map(({ playerId }) => {
      const player = state.players.find((one) => one.playerId === playerId)
      const isThere =
        second === null
          ? index >= next && player !== undefined
          : player !== undefined && stateAt(player.segments, second)?.state === 'here'
      return seats.get(playerId) ?? (isThere ? resting : away)
    })
  })
}

function problemNow(
  { state, chosen }: AnewWish,
  at: {
    readonly request: PlanRequest
    readonly before: RotationPlan
    readonly fromTurn: number
    readonly firstFree: number
  },
): RotationProblem {
  const base = problemOfRequest(at.request)
  const frames = turnFrames(at.request.design.rounds)
  const played = new Map(state.played.map((turn) => [turn.index, turn]))
  const turns = base.turns.map((turn, index) => {
    if (index >= at.firstFree) {
      const shape = chosen?.get(state.turns[index]?.round ?? -1)
      return shape ? { ...turn, stations: frames[index]?.half === 1 ? shape.map(changedOver) : shape } : turn
    }
    if (index >= at.fromTurn) return { ...turn, stations: seatsOf(state.turns[index]?.stations ?? []) }
    const own = played.get(index)
    const live = state.live?.index === index ? state.live : null
    const stations = own?.parts[0].stations ?? live?.stations ?? []
    return { ...turn, seconds: own ? own.end - own.start : turn.seconds, stations: seatsOf(stations) }
  })
  const players = base.players.map((player, place) => ({
    ...player,
    present: turns.map((_, index) =>
      index < at.fromTurn
        ? (at.before[index]?.[place] ?? away) !== away
        : isExpected(state, at.request, place, index),
    ),
  }))
  return withFullGames(
    { ...base, turns, players },
    { state, chosen, request: at.request, from: at.firstFree },
  )
}

/** Where everybody was to play the free game, everybody who is here now plays it; one that is called stays as it is. */
function withFullGames(
  problem: RotationProblem,
  {
    state,
    chosen,
    request,
    from,
  }: Pick<AnewWish, 'state' | 'chosen'> & { readonly request: PlanRequest; readonly from: number },
): RotationProblem {
  if (!isFreeGameForAll(state.plan)) return problem
  const frames = turnFrames(request.design.rounds)
  return request.design.rounds.reduce((own, round, index) => {
    const [first, second = null] = frames.flatMap((frame, turn) =>
      frame.round === index && turn >= from ? [turn] : [],
    )
    if (!round.isFreeGame || first === undefined || chosen?.has(index)) return own
    const isSecondAlone = frames[first]?.half === 1
    const drawn = isSecondAlone ? { ...round, stations: round.stations.map(changedOver) } : round
    const shape = freeGameForAll(own, { halves: { first, second }, round: drawn })
    if (shape === null) return own
    const game = withStations(own, [first], shape)
    return second === null ? game : withStations(game, [second], shape.map(changedOver))
  }, problem)
}

function seatsOf(stations: readonly Station[]): readonly StationSeats[] {
  return stations.map(({ attack, defend, keep }) => ({
    attack: attack.length,
    defend: defend.length,
    keep: keep.length,
  }))
}

/** Whether somebody is there for a turn to come: here now and not to leave before it, or expected to come for it. */
function isExpected(state: PitchState, { players }: PlanRequest, place: number, index: number): boolean {
  const planned = players[place]
  const player = state.players.find(({ playerId }) => playerId === planned?.playerId)
  if (!planned || !player || player.isOut) return false
  const [first = 1, last = 0] = [planned.present[0]?.[0], planned.present.at(-1)?.[1]]
  // Whoever was to leave by now and is still here stays.
  if (player.state === 'here') return index + 1 <= last || isPast(planned.present, firstToCome(state))
  const isAwaited = player.state === 'missing' && first > (state.next?.index ?? 0) + 1
  const isTakenToBeHere = player.state === 'missing' && !state.isRegisterTaken
  return (isAwaited || isTakenToBeHere) && first <= index + 1 && index + 1 <= last
}
