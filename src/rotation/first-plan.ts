import { balanceDuties } from '#rotation/balance-duties'
import { chooseKeepers } from '#rotation/choose-keepers'
import { fairSeconds } from '#rotation/fair-seconds'
import type { MayTake } from '#rotation/may-take'
import { resting } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { type ColumnSeconds, type RotationProblem, seatRoles } from '#rotation/problem'
import { seatAllTurns } from '#rotation/seat-all-turns'

const roleColumns = [...seatRoles, 'rest'] as const

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
  const { waitingWeight, restLimit } = style
  return seatAllTurns(problem, mayTake, {
    restLimit,
    duties: choice.duties,
    owed,
    isDutyBooked: true,
    besides: ({ seconds, run, beyond }, _player, place) =>
      place === resting && beyond === 0 ? waitingWeight * seconds ** 2 * (run + 1) ** 2 : 0,
  })
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

/** What each player is still to get of each role: fair share − gap, player by player, four roles each. */
export function owedSeconds(problem: RotationProblem): Float64Array {
  const due = fairSeconds(problem)
  return Float64Array.from(
    problem.players.flatMap((player, index) =>
      roleColumns.map((column) => (due[index] as ColumnSeconds)[column] - player.gap[column]),
    ),
  )
}
