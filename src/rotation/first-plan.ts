import { balanceDuties } from '#rotation/balance-duties'
import { chooseKeepers, type KeeperDuties } from '#rotation/choose-keepers'
import { fairSeconds } from '#rotation/fair-seconds'
import { restLimitOf } from '#rotation/limits'
import type { MayTake } from '#rotation/may-take'
import { OwnLimits } from '#rotation/own-limits'
import { resting, roleIndexOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { type ColumnSeconds, type RotationProblem, seatRoles } from '#rotation/problem'
import { seatTurn } from '#rotation/seat-turn'

const roleColumns = [...seatRoles, 'rest'] as const
/** Whoever would rest too long is seated before anything else counts. */
const tooLong = 1e10

export type FirstPlanStyle = {
  /** How much a turn of waiting weighs against even shares: 0 only keeps to the limit, more goes by who waits longest. */
  readonly waitingWeight: number
  readonly restLimit: number | null
}

/**
 * A plan made turn by turn, each seated as cheaply as can be for what is owed by then. Keeps every rule but, it may be,
 * the rest limit; null when some turn cannot be seated at all. Takes a few milliseconds and no solver.
 */
export function firstPlan(
  problem: RotationProblem,
  mayTake: MayTake,
  style: FirstPlanStyle,
): RotationPlan | null {
  const owed = owedSeconds(problem)
  const keep = seatRoles.indexOf('keep')
  const perRole = (player: number, role: number) => owed[player * 4 + role] as number
  const wanted = balanceDuties(problem, mayTake, owedKeeping(problem, owed))
  const choice = chooseKeepers(problem, mayTake, {
    order: (players, { chain, step, seconds }) =>
      [...players].sort(
        (a, b) =>
          Number(step === 0 && b === wanted[chain]) - Number(step === 0 && a === wanted[chain]) ||
          dutyCost(perRole(a, keep), seconds) - dutyCost(perRole(b, keep), seconds) ||
          a - b,
      ),
    onDuty: (player, seconds, sign) => {
      owed[player * 4 + keep] = perRole(player, keep) - sign * seconds
    },
  })
  if ('impossibleRound' in choice) return null
  return seatAll({ problem, mayTake, style, owed, duties: choice.duties })
}

/**
 * How much keeping would suit each player best. Where the gaps of a player do not add up to nothing, each role bears a
 * quarter of the rest.
 */
function owedKeeping(problem: RotationProblem, owed: Float64Array): readonly number[] {
  return problem.players.map(({ gap }, player) => {
    const sum = gap.attack + gap.defend + gap.keep + gap.rest
    return (owed[player * 4 + seatRoles.indexOf('keep')] as number) + sum / 4
  })
}

/** What another `seconds` add to the square of what is still owed. */
function dutyCost(owed: number, seconds: number): number {
  return (owed - seconds) ** 2 - owed ** 2
}

function seatAll(asked: {
  readonly problem: RotationProblem
  readonly mayTake: MayTake
  readonly style: FirstPlanStyle
  readonly owed: Float64Array
  readonly duties: KeeperDuties
}): RotationPlan | null {
  const { problem, mayTake, style, owed, duties } = asked
  const runs = problem.players.map(({ restedBefore = 0 }) => restedBefore)
  const limits = new OwnLimits(problem, duties)
  const restLimits = problem.players.map((player) =>
    style.restLimit === null ? Number.POSITIVE_INFINITY : restLimitOf(player, style.restLimit),
  )
  const plan: (readonly number[])[] = []
  for (const [turn, { seconds }] of problem.turns.entries()) {
    const keepers = duties[turn] ?? new Map<number, number>()
    const places = seatTurn(problem, mayTake, {
      turn,
      keepers,
      cost: (player, place) => {
        // What keepers who stay owe has been counted when they were chosen.
        if (keepers.has(player)) return 0
        const cost = dutyCost(owed[player * 4 + roleIndexOf(place)] as number, seconds)
        if (place > resting) return cost + tooLong * limits.excess(player)
        return cost + waitingCost({ run: runs[player] ?? 0, limit: restLimits[player] ?? 0 }, seconds, style)
      },
    })
    if (places === null) return null
    plan.push(places)
    places.forEach((place, player) => {
      runs[player] = place === resting ? (runs[player] ?? 0) + 1 : 0
      limits.book(turn, player, place)
      if (place < resting || keepers.has(player)) return
      const index = player * 4 + roleIndexOf(place)
      owed[index] = (owed[index] as number) - seconds
    })
  }
  return plan
}

function waitingCost(
  { run, limit }: { readonly run: number; readonly limit: number },
  seconds: number,
  { waitingWeight }: FirstPlanStyle,
): number {
  if (run >= limit) return tooLong * (1 + run - limit)
  return waitingWeight * seconds ** 2 * (run + 1) ** 2
}

/** What each player is still to get of each role: fair share − gap, player by player, four roles each. */
export function owedSeconds(problem: RotationProblem): Float64Array {
  const due = fairSeconds(problem)
  return Float64Array.from(
    problem.players.flatMap((player, index) =>
      roleColumns.map((column) => (due[index] as ColumnSeconds)[column] - player.gap[column]),
    ),
  )
}
