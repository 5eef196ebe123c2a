import { attendancesOf } from '#ahead/chance/attendances'
import type { ChanceOptions, Chances } from '#ahead/chance/chances'
import { dealerAsPlanned } from '#ahead/chance/deal-as-planned'
import { dealerAsSoFar } from '#ahead/chance/deal-as-so-far'
import { playedWay } from '#ahead/chance/played-way'
import { practicesToDeal } from '#ahead/chance/practice-to-deal'
import type { AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'

/** Rests of a term in one slice: some thousandths of a second. */
const slice = 20

/**
 * How likely everyone is to end the term inside the tolerance under a plan, and if all goes on as so far; both with the
 * same players coming and staying away, so that what differs is not chance. Exact where the ways to come and stay away
 * are no more than the draws. In slices: each yields the part that is done, 0-1, and whoever asks may pause or stop
 * between them.
 */
export function* chancesInSlices(
  problem: AheadProblem,
  plan: AheadPlan,
  options: ChanceOptions,
): Generator<number, Chances> {
  const practices = practicesToDeal(problem, plan)
  const attendances = attendancesOf(problem, options)
  const asPlanned = playedWay(problem, { practices, deal: dealerAsPlanned(problem.players.length) })
  const dealSoFar = dealerAsSoFar(problem)
  const asSoFar = dealSoFar && playedWay(problem, { practices, deal: dealSoFar })
  let played = 0
  for (const attendance of attendances.each()) {
    asPlanned.play(attendance)
    asSoFar?.play(attendance)
    played++
    if (played % slice === 0) yield played / attendances.count
  }
  return {
    isExact: attendances.isExact,
    played,
    plan: asPlanned.chances(attendances),
    carryOn: asSoFar?.chances(attendances) ?? null,
  }
}
