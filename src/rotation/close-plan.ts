import { chooseKeepers } from '#rotation/choose-keepers'
import { owedSeconds } from '#rotation/first-plan'
import { keeperChains } from '#rotation/keeper-chains'
import type { MayTake } from '#rotation/may-take'
import { away, resting } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'
import { seatAllTurns } from '#rotation/seat-all-turns'

const keepOwed = 2
/** Seconds² that a place other than before counts: more than any share of one turn. */
const changed = 1e8

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
  return seatAllTurns(problem, mayTake, {
    restLimit: problem.restLimit,
    duties: choice.duties,
    owed,
    isDutyBooked: false,
    besides: ({ turn }, player, place) => {
      const before = old[turn]?.[player] ?? away
      return place === before || (before === away && place === resting) ? 0 : changed
    },
  })
}
