import type { Proof } from '#common/proof'
import { proofOf } from '#common/proof'
import type { Seconds } from '#common/time'
import type { LetGo } from '#lineup/draft/line-up-solver'
import { findLineUpClash } from '#lineup/find-line-up-clash'
import type { LineUpPlan } from '#lineup/line-up'
import { lineUpValues } from '#lineup/line-up-values'
import { type LineUpProblem, noRules } from '#lineup/problem'
import { quickLineUp } from '#lineup/quick-line-up'
import { shareOfTime } from '#solver/deadline'
import { type GoalsReached, goalByGoal, type Known } from '#solver/line-up-goals'
import type { LineUpSearch } from '#solver/line-up-stage'
import { NotDecided } from '#solver/not-decided'
import { firstSteps, isOfRules, type LineUpSettings, lineUpSearch } from '#solver/solve-line-up'

/** What comes of letting one thing go: seconds short of the least time over all players, with the proof, and a plan. */
export type WayOut = { readonly letGo: LetGo; readonly short: Proof; readonly plan: LineUpPlan }

/**
 * Where no line-up can be, or a promise is missed by `missed` seconds: what lets there be one, or misses less, when that
 * one thing is let go; the best first. Each is searched for by itself; a way that is not in the list does not help, as far
 * as the time allowed to prove.
 */
export async function lineUpWaysOut(
  problem: LineUpProblem,
  settings: Omit<LineUpSettings, 'start' | 'onBetter'> & { readonly missed: Seconds | null },
): Promise<readonly WayOut[]> {
  const things = thingsToLetGo(problem)
  const ways: WayOut[] = []
  for (const [index, letGo] of things.entries()) {
    const leftMs = settings.began + settings.timeLimitMs - performance.now()
    if (leftMs <= 0) break
    const freer = without(problem, letGo)
    if (findLineUpClash(freer).some(isOfRules)) continue
    const share = Math.max(50, shareOfTime(settings, { searches: things.length, index }))
    const search = await lineUpSearch(freer, { ...settings, began: performance.now(), timeLimitMs: share })
    const quick = quickLineUp(freer, { seed: settings.seed, steps: firstSteps })
    const first = quick && { plan: quick, values: lineUpValues(freer, quick) }
    const found = leastShort(search, first)
    if (!found) continue
    const short = proofOf(found.best.values.promise, found.bounds.promise)
    if (settings.missed !== null && short.value >= settings.missed - 1e-6) continue
    ways.push({ letGo, short, plan: found.best.plan })
  }
  return ways.sort((one, other) => one.short.value - other.short.value)
}

/** Null: no line-up, or none found in time. */
function leastShort(search: LineUpSearch, first: Known | null): GoalsReached | null {
  try {
    return goalByGoal(search, { first, another: () => null, onBetter: () => {} }, ['promise'])
  } catch (error) {
    if (error instanceof NotDecided) return null
    throw error
  }
}

/** In the order in which a coach would rather let them go: own wishes, then the rules of the match. */
function thingsToLetGo({ rules, apart, fixed }: LineUpProblem): readonly LetGo[] {
  const order: readonly Exclude<LetGo, { readonly pair: number } | { readonly player: number }>['what'][] = [
    'mostChanges',
    'leastSpellSeconds',
    'longestSpellSeconds',
    'longestOffSeconds',
    'keeperForPeriod',
    'mostKeeperPeriods',
    'mostSubstitutions',
    'mayReturn',
  ]
  const held = [...new Set(fixed.map(({ player }) => player))]
  return [
    ...order.flatMap((what): LetGo[] => (rules[what] === noRules[what] ? [] : [{ what }])),
    ...apart.map((_, pair): LetGo => ({ what: 'apart', pair })),
    ...held.map((player): LetGo => ({ what: 'fixed', player })),
  ]
}

/** The same problem with one thing let go. */
export function without(problem: LineUpProblem, letGo: LetGo): LineUpProblem {
  switch (letGo.what) {
    case 'apart':
      return { ...problem, apart: problem.apart.filter((_, pair) => pair !== letGo.pair) }
    case 'fixed':
      return { ...problem, fixed: problem.fixed.filter(({ player }) => player !== letGo.player) }
    default:
      return { ...problem, rules: { ...problem.rules, [letGo.what]: noRules[letGo.what] } }
  }
}
