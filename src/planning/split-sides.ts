import type { PlannedPlayer, PlanRequest } from '#planning/practice-plan'
import type { PlayerId } from '#squad/player'

/** What a split into two sides looks at; abilities are no part of it. */
export type SplitInput = {
  readonly players: readonly Pick<PlannedPlayer, 'playerId' | 'keeps' | 'notInGoal' | 'gap'>[]
  /** On different sides, where that can be. */
  readonly apart: readonly (readonly [PlayerId, PlayerId])[]
  /** On one side, where that can be. */
  readonly together: readonly (readonly [PlayerId, PlayerId])[]
}

type Side = 0 | 1

/**
 * Two sides as equal as can be: numbers first, then pairs, then who may keep goal, then what each side together is owed
 * of attacking. The same for the same input. Found by exchanging players between the sides until nothing helps.
 */
export function splitSides(input: SplitInput): ReadonlyMap<PlayerId, Side> {
  const sides: Side[] = input.players
    .map((player, index) => ({ index, owed: player.gap.attack - player.gap.defend }))
    .sort((a, b) => a.owed - b.owed || a.index - b.index)
    .reduce<Side[]>((dealt, { index }, at) => {
      // As captains pick: 0, 1, 1, 0, 0, 1, 1, …
      dealt[index] = ([0, 1, 1, 0] as const)[at % 4] ?? 0
      return dealt
    }, [])
  for (let isBetter = true; isBetter; ) {
    isBetter = false
    for (let one = 0; one < sides.length; one += 1)
      for (let other = one + 1; other < sides.length; other += 1)
        if (sides[one] !== sides[other] && helps(input, sides, [one, other])) isBetter = true
  }
  return new Map(input.players.map(({ playerId }, index) => [playerId, sides[index] ?? 0]))
}

/** The request with everyone in the bibs of a side, the sides as equal as can be. */
export function withEvenSides(request: PlanRequest): PlanRequest {
  const sides = splitSides(request)
  return {
    ...request,
    players: request.players.map((player) => ({ ...player, side: sides.get(player.playerId) ?? null })),
  }
}

/** The request with two sides that are kept, where its design has them: so it is unless the coach says otherwise. */
export function withSidesOfDesign(request: PlanRequest): PlanRequest {
  if (!request.design.sides) return request
  return withEvenSides({ ...request, rules: { ...request.rules, keepsSides: true } })
}

/** The side with fewer of these players: whose bib somebody who joins them gets. */
export function smallerSide(players: readonly Pick<PlannedPlayer, 'side'>[]): Side {
  const count = (side: Side) => players.filter((player) => player.side === side).length
  return count(1) < count(0) ? 1 : 0
}

/** Exchanges two players between the sides, and takes it back unless it is better. */
function helps(input: SplitInput, sides: Side[], [one, other]: readonly [number, number]): boolean {
  const before = costOf(input, sides)
  const exchange = () => {
    const kept = sides[one] ?? 0
    sides[one] = sides[other] ?? 0
    sides[other] = kept
  }
  exchange()
  const after = costOf(input, sides)
  const first = after.findIndex((cost, index) => Math.abs(cost - (before[index] ?? 0)) > 1e-9)
  if (first >= 0 && (after[first] ?? 0) < (before[first] ?? 0)) return true
  exchange()
  return false
}

/** What is wrong with a split, the most important first. */
function costOf({ players, apart, together }: SplitInput, sides: readonly Side[]): readonly number[] {
  const sideOf = new Map(players.map(({ playerId }, index) => [playerId, sides[index]]))
  const meet = (pairs: SplitInput['apart'], wanted: boolean) =>
    pairs.filter(([one, other]) => {
      const [mine, theirs] = [sideOf.get(one), sideOf.get(other)]
      return mine !== undefined && theirs !== undefined && (mine === theirs) === wanted
    }).length
  const difference = (weight: (player: SplitInput['players'][number]) => number) =>
    Math.abs(players.reduce((sum, player, at) => sum + (sides[at] === 0 ? 1 : -1) * weight(player), 0))
  return [
    meet(apart, true) + meet(together, false),
    difference((player) => (player.keeps && !player.notInGoal ? 1 : 0)),
    difference((player) => player.gap.attack - player.gap.defend),
  ]
}
