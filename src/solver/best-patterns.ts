import { checkLineUp } from '#lineup/check-line-up'
import type { LineUpGoal, LineUpPlan, LineUpValues } from '#lineup/line-up'
import { lineUpBounds } from '#lineup/line-up-bounds'
import { lineUpValues } from '#lineup/line-up-values'
import { isBetterLineUp } from '#solver/compare-line-ups'
import { dealLines } from '#solver/deal-lines'
import { anything, levelTable, type Within } from '#solver/line-up-levels'
import { type LineUpSearch, type StageAnswer, solveStage } from '#solver/line-up-stage'

export type Known = { readonly plan: LineUpPlan; readonly values: LineUpValues }
type Bounds = Readonly<Record<LineUpGoal, number>>

/** The best line-up found, lines aside; bounds of every goal but lines, each given the values of those before it. */
export type BestPatterns = { readonly best: Known; readonly bounds: Bounds; readonly within: Within }

/** The best plan may always be looked for so long, whatever the limit: an answer is never left open. */
const leastMs = 20_000

/**
 * Goal by goal, lines left aside: first all at once, as if each could be as good as arithmetic allows; where that cannot
 * be, one after another. Null: no line-up keeps the rules.
 */
export function bestPatterns(
  search: LineUpSearch,
  incumbent: () => Known | null,
  onBetter: (known: Known) => void,
): BestPatterns | null {
  return atBounds(search) ?? goalByGoal(search, incumbent(), onBetter)
}

function atBounds(search: LineUpSearch): BestPatterns | null {
  const answer = solveStage(search, {
    goal: 'changes',
    within: 'atBounds',
    start: null,
    mostMs: search.deadline.leftMs() / 2,
  })
  const best = knownOf(search, answer)
  if (!best) return null
  const { values } = best
  return {
    best,
    within: values,
    bounds: { ...values, lines: 0, changes: Math.min(values.changes, answer.bound) },
  }
}

const goals = ['promise', 'minutes', 'goal', 'starts', 'changes'] as const

function goalByGoal(
  search: LineUpSearch,
  first: Known | null,
  onBetter: (known: Known) => void,
): BestPatterns | null {
  const bounds: Record<LineUpGoal, number> = {
    promise: 0,
    minutes: 0,
    goal: 0,
    starts: 0,
    lines: 0,
    changes: 0,
  }
  let within: Within = anything
  let best = first
  for (const goal of goals) {
    const easy = best ? easyBound(search, goal, within, best.values) : Number.NEGATIVE_INFINITY
    const isReached = best !== null && best.values[goal] - easy <= 1e-6 * Math.max(1, best.values[goal])
    if (isReached) bounds[goal] = easy
    else {
      const answer = solveStage(search, {
        goal,
        // What is known already need not be looked for again.
        within: best && goal !== 'changes' ? { ...within, [goal]: best.values[goal] } : within,
        start: best?.plan ?? null,
        mostMs: best ? search.deadline.leftMs() : Math.max(leastMs, search.deadline.leftMs()),
      })
      const found = knownOf(search, answer)
      if (found && (!best || isBetterLineUp(found.values, best.values))) {
        best = found
        onBetter(found)
      }
      if (!best) return null
      const isProven =
        answer.status === 'optimal' && best.values[goal] - answer.bound <= 1e-4 * Math.max(1, answer.bound)
      bounds[goal] = isProven ? best.values[goal] : Math.max(easy, Math.min(best.values[goal], answer.bound))
    }
    if (best && goal !== 'changes') within = { ...within, [goal]: best.values[goal] }
  }
  return best && { best, bounds, within }
}

function easyBound(
  search: LineUpSearch,
  goal: (typeof goals)[number],
  within: Within,
  values: LineUpValues,
): number {
  if (goal === 'promise' || goal === 'changes') return lineUpBounds(search.problem, values)[goal]
  return Math.max(0, levelTable(search.problem, search.classes, within).bounds[goal])
}

function knownOf({ problem }: LineUpSearch, { patterns }: StageAnswer): Known | null {
  const plan = patterns && dealLines(problem, patterns)
  if (!plan || checkLineUp(problem, plan).length > 0) return null
  return { plan, values: lineUpValues(problem, plan) }
}
