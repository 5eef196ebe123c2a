import type { Seconds } from '#common/time'
import type { LineUpOffer } from '#lineup/draft/line-up-solver'
import { fairLineUp } from '#lineup/fair-line-up'
import { type LineUp, type LineUpPlan, lineUpGoals } from '#lineup/line-up'
import { lineUpValues, secondsOf } from '#lineup/line-up-values'
import type { LineUpProblem } from '#lineup/problem'
import { shareOfTime } from '#solver/deadline'
import { anything } from '#solver/line-up-levels'
import { solveStage } from '#solver/line-up-stage'
import { type LineUpSettings, lineUpSearch, solveLineUp } from '#solver/solve-line-up'

const mostOffers = 4
/** With less no offer is begun: it could not be proven, and its first tries alone take longer. */
const leastMs = 50

/**
 * What fewer changes would cost: for some numbers of changes below those of a line-up, down to the fewest that rules and
 * promises allow, the fairest line-up with so many. Those that cost nobody a minute come with it.
 */
export async function lineUpTradeOffs(
  problem: LineUpProblem,
  lineUp: LineUp,
  settings: Omit<LineUpSettings, 'start' | 'onBetter'>,
): Promise<readonly LineUpOffer[]> {
  const changes = lineUp.proofs.changes.value
  if (changes < 1) return []
  const leftMs = () => settings.began + settings.timeLimitMs - performance.now()
  const search = await lineUpSearch(problem, settings)
  const promise = lineUp.proofs.promise.value
  const fewest = solveStage(search, {
    goal: 'changes',
    within: { ...anything, promise },
    mostLines: null,
    start: lineUp.plan,
    mostMs: leftMs() / 4,
  })
  const least = Math.min(changes, Math.max(0, fewest.bound))
  const offers: LineUpOffer[] = []
  const numbers = numbersBetween(least, changes - 1)
  for (const [index, most] of numbers.entries()) {
    if (leftMs() <= leastMs) break
    const timeLimitMs = shareOfTime(settings, { searches: numbers.length, index })
    const fewer = { ...problem, rules: { ...problem.rules, mostChanges: most } }
    const answer = await solveLineUp(fewer, { ...settings, began: performance.now(), timeLimitMs })
    if (answer.kind === 'solved') offers.push(tradeOffOf(problem, lineUp, answer.lineUp))
  }
  // Fewer changes at the same price make the others idle.
  return offers.filter(
    (offer) =>
      !offers.some(
        (other) =>
          other !== offer &&
          other.changes <= offer.changes &&
          lineUpGoals.every((goal) => other.lineUp.proofs[goal].value <= offer.lineUp.proofs[goal].value),
      ),
  )
}

/** A handful of numbers from the most down to the least, both among them. */
function numbersBetween(least: number, most: number): readonly number[] {
  const count = Math.min(mostOffers, most - least + 1)
  if (count <= 0) return []
  const step = count === 1 ? 0 : (most - least) / (count - 1)
  return [...new Set(Array.from({ length: count }, (_, index) => Math.round(most - index * step)))]
}

function tradeOffOf(problem: LineUpProblem, before: LineUp, lineUp: LineUp): LineUpOffer {
  const was = unevennessOf(problem, before.plan)
  const is = unevennessOf(problem, lineUp.plan)
  const further = is.map((seconds, player) => seconds - (was[player] ?? 0))
  const values = lineUpValues(problem, lineUp.plan)
  return {
    changes: values.changes,
    fewer: before.proofs.changes.value - values.changes,
    players: further.filter((seconds) => seconds > 0.5).length,
    seconds: Math.max(0, ...further),
    short: Math.max(0, values.promise - before.proofs.promise.value),
    isProven: lineUp.proofs.promise.proven && lineUp.proofs.minutes.proven,
    lineUp,
  }
}

/** How far each is from what it is due, either way; the furthest first, so that like is held against like. */
function unevennessOf(problem: LineUpProblem, plan: LineUpPlan): readonly Seconds[] {
  const fair = fairLineUp(problem)
  return problem.players
    .map(({ owed }, player) =>
      Math.abs(owed.playSeconds + (fair.play[player] ?? 0) - secondsOf(problem, plan[player])),
    )
    .sort((one, other) => other - one)
}
