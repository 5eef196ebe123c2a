import { checkLineUp } from '#lineup/check-line-up'
import { isBetterLineUp } from '#lineup/compare-line-ups'
import type { LineUpGoal, LineUpPlan, LineUpValues } from '#lineup/line-up'
import { lineUpBounds } from '#lineup/line-up-bounds'
import { lineUpValues } from '#lineup/line-up-values'
import { isUp } from '#solver/deadline'
import { dealLines, settledLineUp } from '#solver/deal-lines'
import { dealLinesExactly } from '#solver/deal-lines-exactly'
import { anything, levelTable, type Within } from '#solver/line-up-levels'
import { type LineUpSearch, type Stage, type StageAnswer, solveStage } from '#solver/line-up-stage'
import { NotDecided } from '#solver/not-decided'

export type Known = { readonly plan: LineUpPlan; readonly values: LineUpValues }
type Bounds = Record<LineUpGoal, number>

/** The best line-up found, with bounds: each given the values of the goals before it. */
export type GoalsReached = { readonly best: Known; readonly bounds: Readonly<Bounds> }

export type GoalsWatch = {
  /** Something good to begin with. */
  readonly first: Known | null
  /** Another try by searching, asked for where it is not proven who plays in which line. */
  readonly another: () => Known | null
  readonly onBetter: (known: Known) => void
}

/** The first plan may always be looked for so long, whatever the limit: an answer is never left open. */
const leastMs = 20_000
/** Lines are dealt exactly for so long at most, each time. */
const dealMs = 1500
/**
 * Goal by goal: first all at once, as if each could be as good as arithmetic allows; where that cannot be, one after
 * another. Null: no line-up keeps the rules.
 */
export function reachGoals(search: LineUpSearch, watch: GoalsWatch): GoalsReached | null {
  const shot = solveStage(search, {
    goal: 'lines',
    within: 'atBounds',
    mostLines: null,
    start: watch.first?.plan ?? null,
    mostMs: search.deadline.leftMs() / 2,
  })
  const atBounds = dealt(search, shot)
  if (atBounds) {
    const best = betterOf(atBounds, watch.first, watch)
    if (best === atBounds) watch.onBetter(best)
    const bounds = { ...best.values, lines: shot.bound, changes: 0 }
    return fewestChanges(search, { best, bounds }, { within: 'atBounds', watch })
  }
  const first = goalByGoal(search, watch)
  if (!first) return null
  const { within } = first
  const easy = lineUpBounds(search.problem, first.best.values).lines
  let best = first.best
  const bounds = { ...first.bounds, lines: easy }
  if (!isReached(best.values.lines, easy)) {
    const answer = solveStage(search, {
      goal: 'lines',
      within,
      mostLines: null,
      start: best.plan,
      mostMs: search.deadline.leftMs() / 2,
    })
    bounds.lines = Math.max(easy, answer.bound)
    best = betterOf(best, dealt(search, answer, bounds.lines), watch)
  }
  return fewestChanges(search, { best, bounds }, { within, watch })
}

function fewestChanges(
  search: LineUpSearch,
  reached: GoalsReached,
  { within, watch }: { readonly within: Stage['within']; readonly watch: GoalsWatch },
): GoalsReached {
  const isDealt = isReached(reached.best.values.lines, reached.bounds.lines)
  const isLate = search.deadline.leftWork() === null && isUp(search.deadline)
  const first = isDealt || isLate ? reached.best : betterOf(reached.best, watch.another(), watch)
  const { values, plan } = first
  const easy = lineUpBounds(search.problem, values).changes
  if (values.changes <= easy) return { best: first, bounds: { ...reached.bounds, changes: easy } }
  const answer = solveStage(search, {
    goal: 'changes',
    within,
    mostLines: values.lines,
    start: plan,
    mostMs: search.deadline.leftMs(),
  })
  const best = betterOf(first, dealt(search, answer, values.lines), watch)
  return { best, bounds: { ...reached.bounds, changes: Math.max(easy, answer.bound) } }
}

const goals = ['promise', 'minutes', 'goal', 'starts'] as const
export type FirstGoal = (typeof goals)[number]

/**
 * The first goals in their order, as many as are asked for. Null: no line-up keeps the rules.
 * @throws NotDecided
 */
export function goalByGoal(
  search: LineUpSearch,
  watch: GoalsWatch,
  asked: readonly FirstGoal[] = goals,
): (GoalsReached & { readonly within: Within }) | null {
  const bounds: Bounds = { promise: 0, minutes: 0, goal: 0, starts: 0, lines: 0, changes: 0 }
  let within: Within = anything
  let best = watch.first
  for (const goal of asked) {
    const easy = best ? easyBound(search, goal, within, best.values) : Number.NEGATIVE_INFINITY
    if (best && isReached(best.values[goal], easy)) bounds[goal] = easy
    else {
      const answer = solveStage(search, {
        goal,
        // What is known already need not be looked for again.
        within: best ? { ...within, [goal]: best.values[goal] } : within,
        mostLines: null,
        start: best?.plan ?? null,
        mostMs: best ? search.deadline.leftMs() : Math.max(leastMs, search.deadline.leftMs()),
        mustFind: best === null,
      })
      best = betterOf(
        best,
        known(search, answer.patterns && dealLines(search.problem, answer.patterns)),
        watch,
      )
      if (!best && answer.status === 'infeasible') return null
      best ??= watch.another()
      if (!best) throw new NotDecided()
      const value = best.values[goal]
      const isProven = answer.status === 'optimal' && value - answer.bound <= 1e-4 * Math.max(1, answer.bound)
      bounds[goal] = isProven ? value : Math.max(easy, Math.min(value, answer.bound))
    }
    within = { ...within, [goal]: best.values[goal] }
  }
  return best && { best, bounds, within }
}

function easyBound(search: LineUpSearch, goal: FirstGoal, within: Within, values: LineUpValues): number {
  if (goal === 'promise') return lineUpBounds(search.problem, values).promise
  return Math.max(0, levelTable(search.problem, search.classes, within).bounds[goal])
}

/** Patterns with their lines, as good as can be; `enough` seconds beyond even shares cannot be beaten. */
function dealt(search: LineUpSearch, { patterns, bound }: StageAnswer, enough = bound): Known | null {
  const { problem } = search
  let plan = patterns && dealLines(problem, patterns)
  if (!plan) return null
  if (!isReached(lineUpValues(problem, plan).lines, enough) && !isUp(search.deadline))
    plan = dealLinesExactly(search, plan, { enough, mostMs: dealMs })
  return known(search, settledLineUp(problem, plan))
}

function known({ problem }: LineUpSearch, plan: LineUpPlan | null): Known | null {
  return plan && checkLineUp(problem, plan).length === 0
    ? { plan, values: lineUpValues(problem, plan) }
    : null
}

function isReached(value: number, bound: number): boolean {
  return value - bound <= 1e-6 * Math.max(1, value)
}

function betterOf<Best extends Known | null>(
  best: Best,
  found: Known | null,
  watch: GoalsWatch,
): Best | Known {
  if (!found || (best && !isBetterLineUp(found.values, best.values))) return best
  watch.onBetter(found)
  return found
}
