import { refillTurn } from '#rotation/called-turn'
import { checkPlan } from '#rotation/check-plan'
import { type ClashPart, findClash } from '#rotation/clash'
import { keepAreas } from '#rotation/keep-areas'
import { nearestProblem } from '#rotation/nearest-problem'
import { away } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'
import { replanTail } from '#rotation/replan-tail'
import { type TurnsToStretch, turnsToShrink, withStations } from '#rotation/stretch-turns'
import { tailProblem, withTail } from '#rotation/tail-problem'

export type ReplanWish = {
  /** All turns, played ones included, and who is there for each as it is known now. New players come last. */
  readonly problem: RotationProblem
  /** The plan so far; a player whom it does not know is away in it. */
  readonly before: RotationPlan
  /** The first turn that is not over. All before it stay to the letter. */
  readonly fromTurn: number
  /** How many turns from there on are called: in them only the places of those who left change. */
  readonly called: number
  readonly seed: number
  /** Exchanges tried; see `usualTries`. */
  readonly tries: number
}

export type Replanned = {
  /** The request as planned: with smaller areas where it had to be. */
  readonly problem: RotationProblem
  /** The whole practice, played turns included. */
  readonly plan: RotationPlan
  /** The limit on rests kept from the first turn that was not called. */
  readonly restLimitUsed: number | null
  /** Players whose place in a called turn is another than before, those who left not counted. */
  readonly calledChanges: readonly { readonly turn: number; readonly player: number }[]
}

/**
 * `planned`: as asked. `tooFew`: some turns cannot be filled as they are, or the requirements clash: what clashes, the
 * shapes that would work turn by turn, and a plan with the first of each (null: not even that).
 */
export type Replan =
  | ({ readonly kind: 'planned' } & Replanned)
  | {
      readonly kind: 'tooFew'
      readonly clash: readonly ClashPart[]
      readonly shrink: readonly TurnsToStretch[]
      readonly smaller: Replanned | null
    }

/** As many as take a phone less than a tenth of a second for 24 players and 40 turns. */
export const usualTries = 30_000

/**
 * A plan for the rest of a practice after somebody left, came, or may no longer play. What was played is kept, what was
 * called changes only where somebody left, the rest is made fair again with as few changes as that allows. Needs no
 * solver and no clock: the same for the same input, however the players are listed.
 */
export function replan(wish: ReplanWish): Replan {
  const problem = withoutPlacesOfAbsent(wish.problem)
  const order = [...problem.players.keys()].sort((a, b) => compareIds(problem, a, b))
  const inOrder = { ...wish, problem: reorder(problem, order), before: reorderPlan(wish.before, order) }
  const found = replanInOrder(inOrder)
  const back = order.map((_, player) => order.indexOf(player))
  const restore = (own: Replanned): Replanned => ({
    ...own,
    problem: reorder(own.problem, back),
    plan: reorderPlan(own.plan, back),
    calledChanges: own.calledChanges.map(({ turn, player }) => ({ turn, player: order[player] ?? player })),
  })
  if (found.kind === 'planned') return { ...found, ...restore(found) }
  return {
    ...found,
    clash: findClash(tailProblem(problem, padded(wish), wish.fromTurn)).map((part) => ({
      ...part,
      turn: part.turn + wish.fromTurn,
    })),
    smaller: found.smaller && restore(found.smaller),
  }
}

/** A place held fast for somebody who has left is nobody's. */
function withoutPlacesOfAbsent(problem: RotationProblem): RotationProblem {
  const fixed = problem.fixed.filter(({ turn, player }) => problem.players[player]?.present[turn])
  return { ...problem, fixed }
}

function replanInOrder(wish: ReplanWish): Replan {
  const planned = planRest(wish)
  if (planned) return { kind: 'planned', ...planned }
  const shrink = turnsToShrink(wish.problem, wish.fromTurn)
  const problem = shrink.reduce(
    (own, { turns, proposals: [first] }) => (first ? withStations(own, turns, first.stations) : own),
    wish.problem,
  )
  const smaller = planRest({ ...wish, problem }) ?? planNearest({ ...wish, problem })
  return { kind: 'tooFew', clash: [], shrink, smaller }
}

/** Where it is not the number of players that stands in the way: what clashes is given up one by one. */
function planNearest(wish: ReplanWish): Replanned | null {
  const { problem, fromTurn } = wish
  const near = nearestProblem(tailProblem(problem, padded(wish), fromTurn))
  if (near === null) return null
  const turns = [...problem.turns.slice(0, fromTurn), ...near.turns]
  const fixed = near.fixed.map((own) => ({ ...own, turn: own.turn + fromTurn }))
  const given = { ...problem, turns, fixed, apart: near.apart, rounds: near.rounds }
  return planRest({ ...wish, problem: given })
}

function padded({ problem, before }: ReplanWish): RotationPlan {
  return problem.turns.map((_, turn) => problem.players.map((_, player) => before[turn]?.[player] ?? away))
}

function planRest(wish: ReplanWish): Replanned | null {
  const { problem, fromTurn } = wish
  const before = padded(wish)
  let plan = before.slice(0, fromTurn)
  const free = Math.min(problem.turns.length, fromTurn + wish.called)
  const calledChanges: { readonly turn: number; readonly player: number }[] = []
  for (let turn = fromTurn; turn < free; turn += 1) {
    const places = refillTurn(tailProblem(problem, plan, turn), before.slice(turn, free))
    if (places === null) return null
    places.forEach((place, player) => {
      const old = before[turn]?.[player] ?? away
      if (place !== old && place !== away && old !== away) calledChanges.push({ turn, player })
    })
    plan = [...plan, places]
  }
  const rest = tailProblem(problem, plan, free)
  if (rest.turns.length === 0) return { problem, plan, restLimitUsed: problem.restLimit, calledChanges }
  const tail = replanTail(rest, { old: before.slice(free), seed: wish.seed, tries: wish.tries })
  // Whatever made it, nobody sees a plan that breaks a rule.
  if (tail === null || checkPlan({ ...rest, restLimit: tail.restLimitUsed }, tail.plan).length > 0)
    return null
  const whole = keepAreas(problem, withTail(plan, free, tail.plan), free)
  return { problem, plan: whole, restLimitUsed: tail.restLimitUsed, calledChanges }
}

function compareIds({ players }: RotationProblem, a: number, b: number): number {
  const [one = '', other = ''] = [players[a]?.id, players[b]?.id]
  return one < other ? -1 : one > other ? 1 : a - b
}

/** The same request with its players listed otherwise: `order[new] = old`. */
function reorder(problem: RotationProblem, order: readonly number[]): RotationProblem {
  const placeOf = order.map((_, old) => order.indexOf(old))
  const now = (old: number) => placeOf[old] ?? old
  const pairs = (list: readonly (readonly [number, number])[]) =>
    list.map(([one, other]) => [now(one), now(other)] as const)
  return {
    ...problem,
    players: order.flatMap((old) => problem.players[old] ?? []),
    rounds: problem.rounds.map((round) => ({
      ...round,
      sides: round.sides && { attack: round.sides.attack.map(now), defend: round.sides.defend.map(now) },
    })),
    apart: pairs(problem.apart),
    fixed: problem.fixed.map((own) => ({ ...own, player: now(own.player) })),
    ...(problem.together ? { together: pairs(problem.together) } : {}),
  }
}

function reorderPlan(plan: RotationPlan, order: readonly number[]): RotationPlan {
  return plan.map((places) => order.map((old) => places[old] ?? away))
}
