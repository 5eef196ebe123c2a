import { seededChance } from '#common/chance'
import { impossibleJson } from '#exchange/rotation-json'
import { readRotationRequest } from '#exchange/rotation-request'
import { mayTakeIn } from '#rotation/may-take'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import { leastRestByCounting } from '#rotation/rest-bound'
import type { Rotation } from '#rotation/rotation'
import { setDeadline } from '#solver/deadline'
import { findQuickly } from '#solver/find-within-limit'
import { loadSolver } from '#solver/highs'
import { solveRotation } from '#solver/solve-rotation'
import { randomRotation } from '../support/random-rotation'
import { solvePlainly } from './plain-rotation'

type Solved = {
  readonly problem: RotationProblem
  /** The answer within two seconds, and the best one: within ten where two were not enough. */
  readonly quick: Rotation
  readonly rotation: Rotation
  readonly firstMs: number
  /** How far the first plan is above the best value; null when there was none with the limit that was used. */
  readonly firstExcess: number | null
}

export type RotationBenchWish = {
  /** All 300 requests and 24 against the peer with a minute each, not a sample. */
  readonly isFull: boolean
  /** No request is begun after so long; each of the two parts has half. */
  readonly budgetMs: number
  readonly say: (line: string) => void
}

/**
 * Rotations on seeded requests: first plans, proofs, and the whole timetable given to plain HiGHS in the same run. What
 * the time allowed is printed with the figures.
 */
export async function benchRotations(wish: RotationBenchWish): Promise<string> {
  await loadSolver()
  const solved = await solveAll(wish)
  const isSmall = ({ problem }: Solved) => problem.players.length <= 16 && problem.turns.length <= 24
  const rows = [
    rowOf('all', solved),
    rowOf('rest limit binds, or may', solved.filter(binds)),
    rowOf(
      'rest limit costs nothing',
      solved.filter((own) => !binds(own)),
    ),
    rowOf('up to 16 players and 24 turns', solved.filter(isSmall)),
    rowOf(
      '… of these the limit binds, or may',
      solved.filter((own) => isSmall(own) && binds(own)),
    ),
  ]
  return [
    `| rotations | requests | first plan, median | above the best value, median / p90 | proven in 2 s | proven${wish.isFull ? ' in 10 s' : ''} | gap where not proven, median / p90 | gap ≤ 1 % | limit proven least | price known |`,
    '|---|---|---|---|---|---|---|---|---|---|',
    ...rows,
    '',
    ...(await againstPlain(wish)),
  ].join('\n')
}

/** Whether the limit on rests had to be raised, costs something, or may. */
function binds({ rotation: { restLimit } }: Solved): boolean {
  return restLimit.asked !== null && (restLimit.used !== restLimit.asked || restLimit.price !== 0)
}

async function solveAll({ isFull, budgetMs, say }: RotationBenchWish): Promise<readonly Solved[]> {
  const ends = performance.now() + budgetMs / 2
  const solved: Solved[] = []
  const count = isFull ? 300 : 12
  for (let seed = 1; seed <= count && performance.now() < ends; seed += 1) {
    const own = await solveSeed(seed, isFull ? 10_000 : 2000)
    if (own) solved.push(own)
    if (seed % 10 === 0) say(`rotations: ${seed} of ${count} requests`)
  }
  return solved
}

function problemOfSeed(seed: number, wish: { readonly turns?: number } = {}): RotationProblem | null {
  const request = readRotationRequest(randomRotation(seed, wish))
  if (!request.ok) throw new Error(JSON.stringify(request.reasons))
  return impossibleJson(request.value) ? null : request.value.problem
}

async function solve(problem: RotationProblem, seed: number, timeLimitMs: number) {
  const began = performance.now()
  const rotation = await solveRotation(problem, { seed, timeLimitMs, workLimit: null, began })
  return { rotation, ms: performance.now() - began }
}

async function solveSeed(seed: number, timeLimitMs: number): Promise<Solved | null> {
  const problem = problemOfSeed(seed)
  if (problem === null) return null
  const began = performance.now()
  const deadline = setDeadline({ began, timeLimitMs, workLimit: null })
  const search = { problem, mayTake: mayTakeIn(problem), deadline, chance: seededChance(seed), seed }
  const limit = problem.restLimit === null ? null : leastRestByCounting(problem, problem.restLimit)
  const first = findQuickly(search, limit)
  const firstMs = performance.now() - began
  const { rotation: quick } = await solve(problem, seed, 2000)
  const rotation =
    quick.unfairness.proven || timeLimitMs <= 2000
      ? quick
      : (await solve(problem, seed, timeLimitMs)).rotation
  const best = Math.min(quick.values.unfairness, rotation.values.unfairness)
  return {
    problem,
    quick,
    rotation,
    firstMs,
    firstExcess:
      first && rotation.restLimit.used === limit && quick.restLimit.used === limit
        ? planValues(problem, first).unfairness / Math.max(1, best) - 1
        : null,
  }
}

function rowOf(what: string, solved: readonly Solved[]): string {
  if (solved.length === 0) return `| ${what} | 0 |${' – |'.repeat(8)}`
  const share = (test: (own: Solved) => boolean) =>
    `${((100 * solved.filter(test).length) / solved.length).toFixed(0)} %`
  const gap = ({ value, bound }: Rotation['unfairness']) => (value - bound) / Math.max(1, value)
  const open = solved.filter(({ rotation }) => !rotation.unfairness.proven)
  return `| ${[
    what,
    solved.length,
    `${quantile(
      solved.map(({ firstMs }) => firstMs),
      0.5,
    ).toFixed(0)} ms`,
    percents(solved.flatMap(({ firstExcess }) => (firstExcess === null ? [] : [firstExcess]))),
    share(({ quick }) => quick.unfairness.proven),
    share(({ rotation }) => rotation.unfairness.proven),
    percents(open.map(({ rotation }) => gap(rotation.unfairness))),
    share(({ rotation }) => gap(rotation.unfairness) <= 0.01),
    share(({ rotation }) => rotation.restLimit.proven),
    share(({ rotation: { restLimit } }) => restLimit.asked === null || restLimit.price !== null),
  ].join(' | ')} |`
}

function percents(values: readonly number[]): string {
  if (values.length === 0) return '–'
  return `${(100 * quantile(values, 0.5)).toFixed(1)} / ${(100 * quantile(values, 0.9)).toFixed(1)} %`
}

async function againstPlain({ isFull, budgetMs, say }: RotationBenchWish): Promise<readonly string[]> {
  const [begun, each] = [performance.now(), budgetMs / 4]
  const lines = [
    '| against plain HiGHS | requests | geometric mean of times | worse values | proven here / there |',
    '|---|---|---|---|---|',
  ]
  for (const [part, turns] of [20, 40].entries()) {
    const ends = begun + each * (part + 1)
    const ratios: number[] = []
    let worse = 0
    let [provenHere, provenThere] = [0, 0]
    const wanted = isFull ? 12 : 2
    for (let seed = 1000; ratios.length < wanted && performance.now() < ends; seed += 1) {
      const problem = problemOfSeed(seed, { turns })
      if (problem === null) continue
      const own = await solve(problem, seed, isFull ? 10_000 : 2000)
      const restLimit = own.rotation.restLimit.used
      const plain = await solvePlainly(problem, {
        restLimit,
        near: own.rotation.plan,
        timeMs: isFull ? 60_000 : 5000,
      })
      ratios.push(plain.ms / own.ms)
      if (own.rotation.values.unfairness > plain.value * (1 + 1e-6) + 1e-6) worse += 1
      if (own.rotation.unfairness.proven) provenHere += 1
      if (plain.isProven) provenThere += 1
      say(`rotations: ${turns} turns against the peer, ${ratios.length} of ${wanted}`)
    }
    if (ratios.length === 0) continue
    const mean = Math.exp(ratios.reduce((sum, ratio) => sum + Math.log(ratio), 0) / ratios.length)
    lines.push(
      `| ${turns} turns | ${ratios.length} | ${mean.toFixed(1)}× | ${worse} | ${provenHere} / ${provenThere} |`,
    )
  }
  return lines
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN
}
