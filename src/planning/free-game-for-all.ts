import type { PlanRequest } from '#planning/practice-plan'
import { otherHalf, problemOfRequest } from '#planning/problem-of-request'
import { turnFrames } from '#planning/turn-frames'
import type { AreaShape, DesignRound } from '#practice/design'
import { freeGameFor } from '#practice/free-game-for'
import { placesOfAll } from '#practice/round-places'
import { type MayTake, mayTakeIn } from '#rotation/may-take'
import { presentAt, type RotationProblem } from '#rotation/problem'
import { seatTurn } from '#rotation/seat-turn'
import { withStations } from '#rotation/stretch-turns'

/** The halves of one free game as turns of a problem, from 0; `second` is null where only one of them is meant. */
export type Halves = { readonly first: number; readonly second: number | null }

/**
 * The areas of a free game in which as many play as the rules let: everybody who is there, but for whom a pair kept apart
 * or a limit of a single player stands in the way. `shape`: the game as its first half has it. Null: nobody can.
 */
export function freeGameForAll(
  problem: RotationProblem,
  { halves, round }: { readonly halves: Halves; readonly round: DesignRound },
): readonly AreaShape[] | null {
  const mayTake = mayTakeIn(problem)
  for (const shape of shapesForAll(problem, { halves, round }))
    if (canBePlayed(problem, { halves, shape, mayTake })) return shape
  return null
}

/** The request with its free games for everybody; one that nobody could play stays as it is. */
export function withFreeGameForAll(request: PlanRequest): PlanRequest {
  const shapes = shapesOf(request)
  if (shapes.size === 0) return request
  const rounds = request.design.rounds.map((round, index) => {
    const stations = shapes.get(index)
    return stations ? { ...round, stations } : round
  })
  return { ...request, design: { ...request.design, rounds } }
}

/** Whether there is a free game, and everybody plays in it. */
export function isFreeGameForAll(request: PlanRequest): boolean {
  const shapes = [...shapesOf(request)]
  const isSame = ([index, shape]: (typeof shapes)[number]) =>
    isSameShape(request.design.rounds[index]?.stations ?? [], shape)
  return shapes.length > 0 && shapes.every(isSame)
}

/**
 * What a change of a request makes of its free game: where everybody played before, or the design is another, everybody
 * plays after it.
 */
export function keepingFreeGame(before: PlanRequest, after: PlanRequest): PlanRequest {
  if (after === before) return after
  const isOtherDesign = before.design.id !== after.design.id
  return isOtherDesign || isFreeGameForAll(before) ? withFreeGameForAll(after) : after
}

function isSameShape(one: readonly AreaShape[], other: readonly AreaShape[]): boolean {
  const isSame = (shape: AreaShape, { attack, defend, keep }: AreaShape) =>
    shape.attack === attack && shape.defend === defend && shape.keep === keep
  return one.length === other.length && one.every((shape, at) => isSame(shape, other[at] ?? shape))
}

/** For each round that is a free game, its areas with everybody in them. */
function shapesOf(request: PlanRequest): ReadonlyMap<number, readonly AreaShape[]> {
  const { rounds } = request.design
  const frames = turnFrames(rounds)
  const found = new Map<number, readonly AreaShape[]>()
  if (rounds.every(({ isFreeGame }) => !isFreeGame)) return found
  const problem = problemOfRequest({ ...request, locks: [] })
  rounds.forEach((round, index) => {
    const first = frames.findIndex((frame) => frame.round === index)
    if (!round.isFreeGame || first < 0) return
    const shape = freeGameForAll(problem, { halves: { first, second: otherHalf(frames, first) }, round })
    if (shape) found.set(index, shape)
  })
  return found
}

/** Shapes to try, those with more places first. */
function shapesForAll(
  problem: RotationProblem,
  { halves, round }: { readonly halves: Halves; readonly round: DesignRound },
): readonly (readonly AreaShape[])[] {
  const turns = halves.second === null ? [halves.first] : [halves.first, halves.second]
  const there = presentAt(problem, halves.first).filter((player) =>
    turns.every((turn) => problem.players[player]?.present[turn]),
  )
  const keepersAble = there.filter((player) => problem.players[player]?.keeps).length
  const most = there.length - (halves.second === null ? 0 : oneHalfOnly(problem, there))
  const sides = turns.map((turn) => problem.rounds[problem.turns[turn]?.round ?? -1]?.sides ?? null)
  if (sides.every((own) => own === null))
    return countdown(most, 2).map((present) => freeGameFor(round, { present, keepersAble }).stations)
  const among = (list: readonly number[] | undefined) =>
    list ? list.filter((player) => there.includes(player)).length : there.length
  // Who attacks in one half defends in the other, so that a side is as large as both lists of it allow.
  const places = {
    attack: Math.min(among(sides[0]?.attack), among(sides[1]?.defend)),
    defend: Math.min(among(sides[0]?.defend), among(sides[1]?.attack)),
    keep: Math.min(placesOfAll(round.stations).keep, keepersAble),
  }
  return sizesWithin(places, most).map((size) => spread(size, round.stations.length))
}

/** How many fewer can play at a time since some agreed to play in one half alone: two who wait in turn fill one place. */
function oneHalfOnly({ players }: RotationProblem, there: readonly number[]): number {
  const waiting = there.filter((player) => players[player]?.restsAfterTurn).length
  const once = there.filter((player) => players[player]?.mostTurns === 1 && !players[player]?.restsAfterTurn)
  return Math.ceil(waiting / 2) + once.length
}

/** Sizes of a game between two sides, most players first, then most goals kept, then the most even. */
function sizesWithin(most: AreaShape, present: number): readonly AreaShape[] {
  const sizes = countdown(most.attack, 1).flatMap((attack) =>
    countdown(most.defend, 1).flatMap((defend) =>
      countdown(most.keep, 0).map((keep): AreaShape => ({ attack, defend, keep })),
    ),
  )
  const all = ({ attack, defend, keep }: AreaShape) => attack + defend + keep
  return sizes
    .filter((size) => all(size) <= present)
    .sort(
      (a, b) =>
        all(b) - all(a) ||
        b.keep - a.keep ||
        Math.abs(a.attack - a.defend) - Math.abs(b.attack - b.defend) ||
        b.attack - a.attack,
    )
}

function spread({ attack, defend, keep }: AreaShape, games: number): readonly AreaShape[] {
  const part = (count: number, game: number) => Math.floor(count / games) + (game < count % games ? 1 : 0)
  return Array.from({ length: games }, (_, game) => ({
    attack: part(attack, game),
    defend: part(defend, game),
    keep: part(keep, game),
  }))
}

function canBePlayed(
  problem: RotationProblem,
  {
    halves: { first, second },
    shape,
    mayTake,
  }: { readonly halves: Halves; readonly shape: readonly AreaShape[]; readonly mayTake: MayTake },
): boolean {
  if (shape.some(({ attack, defend }) => attack < 1 || defend < 1)) return false
  const seats = (turn: number, stations: readonly AreaShape[]) =>
    seatTurn(withStations(problem, [turn], stations), mayTake, { turn }) !== null
  return seats(first, shape) && (second === null || seats(second, shape.map(changedOver)))
}

/** In the other half of a free game as many attack as defended before. */
export function changedOver({ attack, defend, keep }: AreaShape): AreaShape {
  return { attack: defend, defend: attack, keep }
}

function countdown(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.max(0, from - to + 1) }, (_, step) => from - step)
}
