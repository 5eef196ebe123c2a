import { chooseKeepers } from '#rotation/choose-keepers'
import { owedSeconds } from '#rotation/first-plan'
import { keeperChains } from '#rotation/keeper-chains'
import { restLimitOf } from '#rotation/limits'
import type { MayTake } from '#rotation/may-take'
import { OwnLimits } from '#rotation/own-limits'
import { away, resting, roleIndexOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'
import { seatTurn } from '#rotation/seat-turn'

const keepOwed = 2
/** Seconds² that a place other than before counts: more than any share of one turn. */
const changed = 1e8
const tooLong = 1e10

/**
 * A plan as close to an older one as each turn by itself allows: places of those who are gone go to whoever is owed
 * most. Keeps every rule but, it may be, limits on rests and of single players; null when a turn cannot be seated.
 */
export function closePlan(
  problem: RotationProblem,
  mayTake: MayTake,
  old: RotationPlan,
): RotationPlan | null {
  const owed = owedSeconds(problem)
  const chains = keeperChains(problem)
  const keptBefore = (player: number, chain: number, step: number) => {
    const turn = chains[chain]?.turns[step]
    return turn !== undefined && old[turn]?.[player] === chains[chain]?.place
  }
  const choice = chooseKeepers(problem, mayTake, {
    order: (players, { chain, step }) =>
      [...players].sort(
        (a, b) =>
          Number(keptBefore(b, chain, step)) - Number(keptBefore(a, chain, step)) ||
          (owed[b * 4 + keepOwed] as number) - (owed[a * 4 + keepOwed] as number) ||
          a - b,
      ),
    onDuty: () => {},
  })
  if ('impossibleRound' in choice) return null
  return seatAll({ problem, mayTake, old, owed, duties: choice.duties })
}

function seatAll(asked: {
  readonly problem: RotationProblem
  readonly mayTake: MayTake
  readonly old: RotationPlan
  readonly owed: Float64Array
  readonly duties: readonly ReadonlyMap<number, number>[]
}): RotationPlan | null {
  const { problem, mayTake, old, owed, duties } = asked
  const runs = problem.players.map(({ restedBefore = 0 }) => restedBefore)
  const limits = new OwnLimits(problem, duties)
  const restLimits = problem.players.map((own) =>
    problem.restLimit === null ? Number.POSITIVE_INFINITY : restLimitOf(own, problem.restLimit),
  )
  const plan: (readonly number[])[] = []
  for (const [turn, { seconds }] of problem.turns.entries()) {
    const keepers = duties[turn] ?? new Map<number, number>()
    const places = seatTurn(problem, mayTake, {
      turn,
      keepers,
      cost: (player, place) => {
        if (keepers.has(player)) return 0
        const before = old[turn]?.[player] ?? away
        const other = place === before || (before === away && place === resting) ? 0 : changed
        const own = owed[player * 4 + roleIndexOf(place)] as number
        const beyond =
          place === resting
            ? Math.max(0, (runs[player] ?? 0) + 1 - (restLimits[player] ?? 0))
            : limits.excess(player)
        return other + (own - seconds) ** 2 - own ** 2 + tooLong * beyond
      },
    })
    if (places === null) return null
    plan.push(places)
    places.forEach((place, player) => {
      runs[player] = place === resting ? (runs[player] ?? 0) + 1 : 0
      limits.book(turn, player, place)
      if (place < resting) return
      const index = player * 4 + roleIndexOf(place)
      owed[index] = (owed[index] as number) - seconds
    })
  }
  return plan
}
