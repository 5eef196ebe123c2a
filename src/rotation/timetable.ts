import { restLimitOf } from '#rotation/limits'
import type { MayTake } from '#rotation/may-take'
import { OwnLimits } from '#rotation/own-limits'
import { resting, roleIndexOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'
import { seatTurn } from '#rotation/seat-turn'

/** How often each player has each role in a group of turns that are alike. */
export type RoleCounts = {
  readonly turns: readonly number[]
  /** Player × 4 + role (attack, defend, keep, rest): turns; keepers who stay not counted. */
  readonly counts: readonly number[]
}

const never = 1e13
const tooLong = 1e7

/**
 * A timetable in which each player has each role as often as counted. In every turn the players and the seats (rest
 * being one) still to be joined form a regular bipartite multigraph, so whatever matching one turn takes, the rest can
 * be matched too (D. König, "Über Graphen und ihre Anwendung auf Determinantentheorie und Mengenlehre", Math. Ann. 77
 * (1916) 453-465). Of these matchings each turn takes one that keeps waits short and roles steady. Null only where
 * pairs kept apart or places fixed stand in the way.
 */
export function timetable(
  problem: RotationProblem,
  mayTake: MayTake,
  wanted: {
    readonly groups: readonly RoleCounts[]
    readonly duties: readonly ReadonlyMap<number, number>[]
    readonly restLimit: number | null
  },
): RotationPlan | null {
  const left = wanted.groups.map(({ counts }) => [...counts])
  const groupOf = new Map(
    wanted.groups.flatMap(({ turns }, group) => turns.map((turn) => [turn, group] as const)),
  )
  const runs = problem.players.map(({ restedBefore = 0 }) => restedBefore)
  const limits = new OwnLimits(problem, wanted.duties)
  const restLimits = problem.players.map((player) =>
    wanted.restLimit === null ? null : restLimitOf(player, wanted.restLimit),
  )
  const plan: (readonly number[])[] = []
  for (const [turn, { round }] of problem.turns.entries()) {
    const own = left[groupOf.get(turn) ?? -1] ?? []
    const keepers = wanted.duties[turn] ?? new Map<number, number>()
    const before = problem.turns[turn - 1]?.round === round ? plan[turn - 1] : undefined
    const places = seatTurn(problem, mayTake, {
      turn,
      keepers,
      cost: (player, place) => {
        if (keepers.has(player)) return 0
        const role = roleIndexOf(place)
        if ((own[player * 4 + role] ?? 0) <= 0) return never
        if (place === resting) return waiting(runs[player] ?? 0, restLimits[player] ?? null)
        const last = before?.[player] ?? resting
        const change = last > resting && roleIndexOf(last) !== role ? 1 : 0
        return change + tooLong * limits.excess(player)
      },
    })
    if (places === null) return null
    plan.push(places)
    places.forEach((place, player) => {
      runs[player] = place === resting ? (runs[player] ?? 0) + 1 : 0
      limits.book(turn, player, place)
      if (place < resting || keepers.has(player)) return
      const index = player * 4 + roleIndexOf(place)
      own[index] = (own[index] ?? 0) - 1
    })
  }
  return plan
}

function waiting(run: number, limit: number | null): number {
  return limit !== null && run >= limit ? tooLong * (1 + run - limit) : 10 * run ** 2
}
