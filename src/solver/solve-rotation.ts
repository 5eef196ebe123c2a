import { seededChance } from '#common/chance'
import { proofOf } from '#common/proof'
import { InvariantError } from '#common/result'
import { planOf } from '#rotation/board'
import { checkPlan } from '#rotation/check-plan'
import { firstPlan } from '#rotation/first-plan'
import { keepAreas } from '#rotation/keep-areas'
import { hasOwnLimits } from '#rotation/limits'
import { mayTakeIn } from '#rotation/may-take'
import { mixingBound } from '#rotation/mixing-bound'
import type { RotationPlan } from '#rotation/plan'
import { planValues } from '#rotation/plan-values'
import { planWithinLimits } from '#rotation/plan-within-limits'
import type { RotationProblem } from '#rotation/problem'
import { leastRestByCounting } from '#rotation/rest-bound'
import type { RestLimitReport, Rotation } from '#rotation/rotation'
import { restLimitRule } from '#rotation/rules/rest-limit-rule'
import { situationBound } from '#rotation/situation-bound'
import { setDeadline } from '#solver/deadline'
import { boundWithoutLimit, type Fairest, improveExactly } from '#solver/fairest-plan'
import { findExactly, findQuickly } from '#solver/find-within-limit'
import { improveByTimetables } from '#solver/improve-by-timetables'
import { improveByWindows } from '#solver/improve-by-windows'
import { polish } from '#solver/polish'
import { boardOf, lower, polishMs, type Search, solverInTime } from '#solver/search'
import type { OnProgress, SolveStage } from '#solver/solve-progress'
import type { WorkerSettings } from '#solver/solver-settings'

/** Players times turns up to which whole timetables are the quickest way to a proof. */
const fewPlaces = 350
/** So near the bound without a limit, the limit on rests seems to cost nothing. */
const nearly = 1.06
/** Exchanges tried on a first plan that is known before the exact solver is asked, and how warm they begin. */
const firstTries = 200_000
const triesPerPlace = 600
const firstHeat = 0.1

export type SolveSettings = WorkerSettings<RotationPlan> & {
  /** When the request had been read, by `performance.now()`. */
  readonly began: number
  readonly onProgress?: OnProgress
}

/**
 * The fairest rotation that can be found in time, with its proofs. The request must be possible (clash.ts).
 * @throws InvariantError when a plan is about to be returned that breaks a rule.
 */
export async function solveRotation(problem: RotationProblem, settings: SolveSettings): Promise<Rotation> {
  const search: Search = {
    problem,
    mayTake: mayTakeIn(problem),
    deadline: setDeadline(settings),
    chance: seededChance(settings.seed),
    seed: settings.seed,
  }
  const start = settings.start ?? null
  const within = await leastLimit(search, start)
  const tell = teller(within.used, settings)
  tell('firstPlan', { ...within, value: planValues(problem, within.plan).unfairness, bound: 0 })
  const fairest = await findFairest(search, fairerOf(problem, within, start), tell)
  tell('finishing', fairest)
  const plan = keepAreas(problem, polish(search, fairest.plan, within.used))
  const broken = checkPlan({ ...problem, restLimit: within.used }, plan)
  if (broken.length > 0) throw new InvariantError('A rotation breaks a rule.', { broken: broken.slice(0, 5) })
  const values = planValues(problem, plan)
  return {
    plan,
    values,
    restLimit: report(problem.restLimit, within, {
      value: values.unfairness,
      without: fairest.without,
    }),
    unfairness: proofOf(values.unfairness, fairest.bound),
    situationUnfairness: proofOf(values.situationUnfairness, situationBound(problem)),
    mixing: proofOf(values.mixing, mixingBound(problem)),
  }
}

type Tell = (stage: SolveStage, best: Fairest) => void

/** Tells of the best so far, when somebody wants to hear it. */
function teller(restLimitUsed: number | null, settings: SolveSettings): Tell {
  return (stage, { plan, value, bound }) => {
    const elapsedMs = performance.now() - settings.began
    settings.onProgress?.({ stage, plan, value, bound, restLimitUsed, elapsedMs })
  }
}

type Within = { readonly plan: RotationPlan; readonly used: number | null; readonly isProven: boolean }

/** The smallest rest limit, from the one asked for on, with which a plan is found, and whether a smaller is impossible. */
async function leastLimit(search: Search, start: RotationPlan | null): Promise<Within> {
  const { problem } = search
  const asked = problem.restLimit
  if (asked === null) {
    const plan =
      findQuickly(search, null) ??
      keeping(problem, start, null) ??
      planWithinLimits(problem, search.mayTake).plan
    if (plan === null) throw new InvariantError('A turn that can be seated was not.')
    return { plan, used: null, isProven: true }
  }
  let isProven = true
  for (let limit = leastRestByCounting(problem, asked); ; limit += 1) {
    const quick = findQuickly(search, limit) ?? keeping(problem, start, limit)
    if (quick) return { plan: quick, used: limit, isProven }
    if (limit > mostRest(problem)) throw new InvariantError('No plan without a limit on rests.', { limit })
    const solver = await solverInTime(search)
    if (!solver) return withinItsOwnLimit(search, limit)
    const exact = findExactly(search, solver, { restLimit: limit, share: 0.3 })
    if (exact.plan) return { plan: exact.plan, used: limit, isProven }
    // Where a limit is impossible, so is every smaller one; a limit that stayed open spoils the proof of those above.
    isProven = exact.isImpossible
  }
}

/** The plan if it keeps every rule with this limit on rests. */
function keeping(
  problem: RotationProblem,
  plan: RotationPlan | null,
  restLimit: number | null,
): RotationPlan | null {
  return plan && checkPlan({ ...problem, restLimit }, plan).length === 0 ? plan : null
}

/** The found plan, or the known one where it keeps the same limit and is fairer. */
function fairerOf(problem: RotationProblem, within: Within, start: RotationPlan | null): Within {
  const known = keeping(problem, start, within.used)
  const worth = (plan: RotationPlan) => planValues(problem, plan).unfairness
  return known && worth(known) < worth(within.plan) ? { ...within, plan: known } : within
}

/** Out of time: the plan that makes nobody wait long, with the longest wait in it as its limit. */
function withinItsOwnLimit(search: Search, least: number): Within {
  const { problem, mayTake } = search
  const plan = hasOwnLimits(problem)
    ? planWithinLimits(problem, mayTake).plan
    : firstPlan(problem, mayTake, { waitingWeight: 40, restLimit: least })
  if (plan === null) throw new InvariantError('A turn that can be seated was not.')
  let used = least
  while (used < mostRest(problem) && restLimitRule({ ...problem, restLimit: used }, plan).length > 0)
    used += 1
  return { plan, used, isProven: false }
}

/** No limit on rests above this ties anyone. */
function mostRest({ players, turns }: RotationProblem): number {
  return turns.length + Math.max(0, ...players.map(({ restedBefore = 0 }) => restedBefore))
}

type FairestOfAll = Fairest & { readonly without: Fairest | null }

/** The fairest plan with the limit, and, as far as time allows, what would be possible without one. */
async function findFairest(search: Search, { plan, used }: Within, tell: Tell): Promise<FairestOfAll> {
  const { problem } = search
  const board = boardOf(search, plan)
  lower(search, board, {
    goal: 'unfairness',
    restLimit: used,
    tries: Math.min(firstTries, triesPerPlace * board.players * board.turns),
    heat: firstHeat,
    reserveMs: polishMs,
  })
  const start = planOf(board)
  let fairest: Fairest = { plan: start, value: planValues(problem, start).unfairness, bound: 0 }
  tell('evening', fairest)
  const solver = await solverInTime(search)
  if (!solver) return { ...fairest, without: null }
  const unlimited = { ...fairest, bound: used === null ? 0 : boundWithoutLimit(search, solver, fairest.plan) }
  fairest = { ...fairest, bound: unlimited.bound }
  tell('evening', fairest)
  const isOpen = ({ value, bound }: Fairest) => value - bound > 1e-6 * Math.max(1, value)
  const improve = (known: Fairest, wish: { restLimit: number | null; share: number; byTurn: boolean }) =>
    isOpen(known) && search.deadline.leftMs() > 2 * polishMs
      ? improveExactly(search, solver, known, wish)
      : known
  // Of what single players agreed to, timetables know longer waits alone: turns by themselves know all of it.
  const isAgreed = hasOwnLimits(problem)
  const byTimetables = () => {
    if (!isAgreed && isOpen(fairest) && search.deadline.leftMs() > 2 * polishMs)
      fairest = improveByTimetables(search, solver, fairest, { restLimit: used, untilMs: polishMs })
    tell('evening', fairest)
  }
  if (used === null) {
    fairest = improve(fairest, { restLimit: used, share: 0.5, byTurn: false })
    byTimetables()
    return { ...fairest, without: null }
  }
  const share = isAgreed ? 0 : countingShare(search, fairest)
  if (share > 0) fairest = improve(fairest, { restLimit: used, share, byTurn: false })
  if (isAgreed) fairest = improve(fairest, { restLimit: used, share: 0.75, byTurn: true })
  else if (isHurried(search) && isOpen(fairest) && search.deadline.leftMs() > 3 * polishMs) {
    const untilMs = search.deadline.leftMs() * 0.3
    fairest = improveByWindows(search, solver, fairest, { restLimit: used, untilMs })
  }
  byTimetables()
  return { ...fairest, without: improve(unlimited, { restLimit: null, share: 0.9, byTurn: false }) }
}

/**
 * How much of the time goes to counting alike turns together before whole timetables have their turn. Where there are
 * few places these are the quickest way to a proof; where a plan is near the bound without a limit already, the limit
 * seems to cost nothing and counting is likely to prove it; where timetables would not get far, counting has more.
 */
function countingShare(search: Search, { value, bound }: Fairest): number {
  const places = search.problem.players.length * search.problem.turns.length
  const isLoose = value <= bound * nearly
  if (places <= fewPlaces) return isLoose ? 0.15 : 0
  return isLoose ? 0.6 : isHurried(search) ? 0.4 : 0.2
}

/** Whether whole timetables would not get far in the time that is left. Where work is limited the clock decides nothing. */
function isHurried({ problem, deadline }: Search): boolean {
  const lengths = new Set(problem.turns.map(({ seconds }) => seconds)).size
  const ms = problem.players.length * problem.turns.length * (1 + lengths)
  return deadline.leftWork() === null && deadline.leftMs() < ms
}

function report(
  asked: number | null,
  { used, isProven }: Within,
  fairness: { readonly value: number; readonly without: Fairest | null },
): RestLimitReport {
  const { value, without } = fairness
  const bound = without === null ? 0 : without.bound
  // A plan that keeps the limit is one of those without it, too.
  const best = without === null ? value : Math.min(value, without.value)
  const isKnown = without !== null && proofOf(best, bound).proven
  const ratio = (to: number) => (value === to ? 0 : to > 0 ? Math.max(0, value / to - 1) : null)
  return {
    asked,
    used,
    leastPossible: used,
    proven: isProven,
    price: used !== null && isKnown ? ratio(best) : null,
    priceAtMost: used === null || without === null ? null : ratio(isKnown ? best : Math.min(value, bound)),
  }
}
