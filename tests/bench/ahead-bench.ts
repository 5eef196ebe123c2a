import { canBePlayed } from '#ahead/can-be-played'
import { greedyAhead } from '#ahead/greedy-plan'
import { planValue } from '#ahead/plan-value'
import type { AheadProblem } from '#ahead/problem'
import { quickAhead } from '#ahead/quick-plan'
import { aheadModel, exactBins } from '#solver/ahead-model'
import { loadSolver } from '#solver/highs'
import { solveAhead } from '#solver/solve-ahead'
import { randomAhead } from '../support/random-ahead'
import { quantile } from './quantile'

type Wish = { readonly isFull: boolean; readonly say: (line: string) => void }
type Run = {
  readonly firstMs: number
  readonly value: number
  readonly bound: number
  readonly isProven: boolean
  /** What the plan comes to when all is shared out evenly, and what the plain planner comes to. */
  readonly even: number
  readonly greedy: number
  readonly plain: { readonly value: number; readonly bound: number; readonly isProven: boolean } | null
}

/** Weeks, and what is asked of them in seconds. */
const sizes = [
  { weeks: 4, seconds: 3 },
  { weeks: 8, seconds: 10 },
  { weeks: 12, seconds: 10 },
  { weeks: 20, seconds: 10 },
] as const

/**
 * Weeks ahead with 20 themes, 15 designs and 16 players on seeded terms; a sample of them given to HiGHS as one plain
 * model, who gets more of what practice by practice, for the same time in the same run.
 */
export async function benchAhead({ isFull, say }: Wish): Promise<string> {
  await loadSolver()
  const rows: string[] = []
  for (const { weeks, seconds } of sizes) {
    const runs: Run[] = []
    for (let seed = 1; seed <= (isFull ? 20 : 5); seed++) {
      const problem = randomAhead(seed, { practices: weeks, themes: 20, designs: 15, players: 16 })
      runs.push(await timed(problem, { ms: seconds * 1000, isPlainToo: seed <= (isFull ? 5 : 2) }))
    }
    say(`weeks ahead: ${weeks} weeks`)
    rows.push(rowOf(weeks, seconds, runs))
  }
  return [
    '| weeks ahead | terms | time | first plan, median / longest | gap to the bound, median / largest | of what could be gained, still open, median / largest | proven | against practice by practice | plain model: gap, proven |',
    '|---|---|---|---|---|---|---|---|---|',
    ...rows,
  ].join('\n')
}

async function timed(
  problem: AheadProblem,
  { ms, isPlainToo }: { readonly ms: number; readonly isPlainToo: boolean },
): Promise<Run> {
  const quickBegan = performance.now()
  const quick = quickAhead(problem, { seed: 1 })
  const firstMs = performance.now() - quickBegan
  const greedy = greedyAhead(problem)
  const began = performance.now()
  const answer = await solveAhead(problem, { seed: 1, timeLimitMs: ms, workLimit: null, began })
  if (answer.kind !== 'solved') throw new Error('There is a plan, and none was found.')
  const { plan, proof } = answer.solved
  if (!canBePlayed(problem, plan)) throw new Error('A plan of the weeks ahead breaks a rule.')
  const evenly = { choices: (quick ?? plan).choices, leans: [] }
  return {
    firstMs,
    value: proof.value,
    bound: proof.bound,
    isProven: proof.proven,
    even: planValue(problem, evenly).all,
    greedy: greedy ? planValue(problem, greedy).all : Number.NaN,
    plain: isPlainToo ? await solvedPlainly(problem, ms) : null,
  }
}

async function solvedPlainly(problem: AheadProblem, timeMs: number): Promise<Run['plain']> {
  const solver = await loadSolver()
  const model = aheadModel(problem, exactBins(problem), { isPlain: true })
  const { status, objective, bound } = solver.solve(model.linear, { timeMs, work: null, seed: 1 })
  return { value: objective, bound: Math.max(0, bound), isProven: status === 'optimal' }
}

function rowOf(weeks: number, seconds: number, runs: readonly Run[]): string {
  const gaps = runs.map(({ value, bound }) => (100 * (value - bound)) / Math.max(1e-9, value))
  const open = runs.map(({ even, value, bound }) => (100 * (value - bound)) / Math.max(1e-9, even - bound))
  const ratios = runs.flatMap(({ greedy, value }) => (Number.isNaN(greedy) ? [] : [value / greedy]))
  const plain = runs.flatMap((run) => (run.plain ? [run.plain] : []))
  const plainGaps = plain.map(({ value, bound }) =>
    Number.isFinite(value) ? (100 * (value - bound)) / Math.max(1e-9, value) : 100,
  )
  const first = runs.map(({ firstMs }) => firstMs)
  const proven = (all: readonly { readonly isProven: boolean }[]) =>
    `${all.filter(({ isProven }) => isProven).length} of ${all.length}`
  const both = (values: readonly number[], unit: string, digits: number) =>
    [quantile(values, 0.5), Math.max(...values)].map((one) => `${one.toFixed(digits)} ${unit}`).join(' / ')
  return `| ${weeks} | ${runs.length} | ${seconds} s | ${both(first, 'ms', 0)} | ${both(gaps, '%', 1)} | ${both(open, '%', 1)} | ${proven(runs)} | ${quantile(ratios, 0.5).toFixed(2)}× | ${both(plainGaps, '%', 0)}, ${proven(plain)} |`
}
