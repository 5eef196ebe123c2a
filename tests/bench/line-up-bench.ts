import { checkLineUp } from '#lineup/check-line-up'
import { lineUpGoals } from '#lineup/line-up'
import type { LineUpProblem } from '#lineup/problem'
import { loadSolver } from '#solver/highs'
import { type LineUpAnswer, solveLineUp } from '#solver/solve-line-up'
import { openLines } from '../support/open-lines'
import { randomLineUp } from '../support/random-line-up'
import { type PlainLineUp, solveLineUpPlainly } from './plain-line-up'
import { quantile } from './quantile'

type Solved = { readonly problem: LineUpProblem; readonly answer: LineUpAnswer; readonly ms: number }

const count = 200
const limitMs = 4000
const plainMs = 8000

/**
 * Line-ups on seeded matches: how long, and what is proven; a sample of them given to HiGHS as one plain model for each
 * goal in the same run.
 */
export async function benchLineUps(wish: {
  readonly isFull: boolean
  readonly say: (line: string) => void
}): Promise<string> {
  await loadSolver()
  const solved: Solved[] = []
  const liked: Solved[] = []
  for (let seed = 1; seed <= count; seed += 1) {
    const problem = randomLineUp(seed, { areEqual: isEqual(seed) })
    solved.push(await timed(problem))
    liked.push(await timed(openLines(problem)))
    if (seed % 20 === 0) wish.say(`line-ups: ${seed} of ${count} matches`)
  }
  const equal = (_: Solved, index: number) => isEqual(index + 1)
  const own = (_: Solved, index: number) => !isEqual(index + 1)
  return [
    `| line-ups | matches | decided | of them impossible | median / p90 / longest | minutes proven | starts proven | lines proven | every goal proven |`,
    '|---|---|---|---|---|---|---|---|---|',
    rowOf('players alike, every line liked', liked.filter(equal)),
    rowOf('players alike, lines shared out', solved.filter(equal)),
    rowOf('players of their own, every line liked', liked.filter(own)),
    rowOf('players of their own, lines shared out', solved.filter(own)),
    '',
    await againstPlain(liked, wish),
  ].join('\n')
}

function isEqual(seed: number): boolean {
  return seed % 2 === 0
}

async function timed(problem: LineUpProblem): Promise<Solved> {
  const began = performance.now()
  const answer = await solveLineUp(problem, { seed: 1, timeLimitMs: limitMs, workLimit: null, began })
  const ms = performance.now() - began
  if (answer.kind === 'solved' && checkLineUp(problem, answer.lineUp.plan).length > 0)
    throw new Error('A line-up breaks a rule.')
  return { problem, answer, ms }
}

function rowOf(name: string, solved: readonly Solved[]): string {
  const times = solved.map(({ ms }) => ms)
  const possible = solved.flatMap(({ answer }) => (answer.kind === 'solved' ? [answer.lineUp.proofs] : []))
  const proven = (goals: readonly (typeof lineUpGoals)[number][]) => {
    const all = possible.filter((proofs) => goals.every((goal) => proofs[goal].proven)).length
    return `${((100 * all) / Math.max(1, possible.length)).toFixed(0)} %`
  }
  const time = [quantile(times, 0.5), quantile(times, 0.9), Math.max(...times)]
  return `| ${name} | ${solved.length} | ${solved.length} | ${solved.length - possible.length} | ${time
    .map((ms) => `${ms.toFixed(0)} ms`)
    .join(
      ' / ',
    )} | ${proven(['promise', 'minutes'])} | ${proven(['promise', 'minutes', 'goal', 'starts'])} | ${proven(['lines'])} | ${proven(lineUpGoals)} |`
}

async function againstPlain(
  liked: readonly Solved[],
  { isFull, say }: { readonly isFull: boolean; readonly say: (line: string) => void },
): Promise<string> {
  const step = isFull ? 2 : 9
  const pairs: { readonly plain: PlainLineUp; readonly own: Solved }[] = []
  for (let index = 0; index < liked.length; index += step) {
    const own = liked[index]
    if (!own) continue
    pairs.push({ own, plain: await solveLineUpPlainly(own.problem, plainMs) })
    if (pairs.length % 6 === 0) say(`line-ups: ${pairs.length} plain models`)
  }
  const sample = pairs.filter(({ own }) => own.answer.kind === 'solved')
  const open = sample.filter(({ plain }) => plain.kind === 'open').length
  const ratios = sample.map(({ own, plain }) => plain.ms / Math.max(1, own.ms))
  const worse = sample.filter(({ own, plain }) => plain.kind === 'solved' && isWorse(own, plain)).length
  const mean = Math.exp(ratios.reduce((sum, ratio) => sum + Math.log(ratio), 0) / Math.max(1, ratios.length))
  return [
    `${sample.length} of these against plain models, player by window, same HiGHS, same run, ${plainMs / 1000} s: ours was quicker by`,
    `${mean.toFixed(1)} (geometric mean; median ${quantile(ratios, 0.5).toFixed(1)}); the plain models were not done in time in ${open};`,
    `ours had the worse value in a goal in ${worse}.`,
  ].join(' ')
}

function isWorse({ answer }: Solved, { values }: PlainLineUp): boolean {
  if (answer.kind !== 'solved') return true
  for (const goal of lineUpGoals) {
    const less = answer.lineUp.proofs[goal].value - values[goal]
    if (Math.abs(less) > 1e-3 * Math.max(1, values[goal])) return less > 0
  }
  return false
}
