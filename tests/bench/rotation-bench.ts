import { seededChance } from '#common/chance'
import { impossibleJson } from '#exchange/rotation-json'
import { readRotationRequest } from '#exchange/rotation-request'
import { mayTakeIn } from '#rotation/may-take'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import type { Rotation } from '#rotation/rotation'
import { setDeadline } from '#solver/deadline'
import { findQuickly } from '#solver/find-within-limit'
import { loadSolver } from '#solver/highs'
import { solveRotation } from '#solver/solve-rotation'
import { randomRotation } from '../support/random-rotation'
import { solvePlainly } from './plain-rotation'

type Solved = {
  readonly problem: RotationProblem
  readonly rotation: Rotation
  readonly ms: number
  readonly firstMs: number
  /** How far the first plan is above the value reached in the end; null when it kept another rest limit. */
  readonly firstExcess: number | null
  readonly isProvenIn2s: boolean
}

/**
 * Rotations on seeded requests: first plans, proofs, and the whole timetable given to plain HiGHS in the same run. The
 * full run takes 300 requests and 24 against the peer with a minute each; the short one is a sample of it.
 */
export async function benchRotations({ isFull }: { readonly isFull: boolean }): Promise<string> {
  await loadSolver()
  const solved: Solved[] = []
  for (let seed = 1; seed <= (isFull ? 300 : 12); seed += 1) {
    const own = await solveSeed(seed, isFull ? 10_000 : 2000)
    if (own) solved.push(own)
  }
  const binds = ({ rotation: { restLimit } }: Solved) =>
    restLimit.asked !== null && (restLimit.used !== restLimit.asked || restLimit.price !== 0)
  const rows = [
    rowOf('all', solved),
    rowOf('rest limit binds, or may', solved.filter(binds)),
    rowOf(
      'rest limit costs nothing',
      solved.filter((own) => !binds(own)),
    ),
    rowOf(
      'up to 16 players and 24 turns',
      solved.filter(({ problem }) => problem.players.length <= 16 && problem.turns.length <= 24),
    ),
  ]
  return [
    '| rotations | requests | first plan, median | above the final value, median / p90 | proven in 2 s | proven | gap ≤ 1 % | limit proven least |',
    '|---|---|---|---|---|---|---|---|',
    ...rows,
    '',
    ...(await againstPlain(isFull)),
  ].join('\n')
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
  const first = findQuickly(search, problem.restLimit)
  const firstMs = performance.now() - began
  const { rotation, ms } = await solve(problem, seed, timeLimitMs)
  const isSameLimit = rotation.restLimit.used === problem.restLimit
  const inTwo =
    timeLimitMs <= 2000 || rotation.unfairness.proven === false ? null : await solve(problem, seed, 2000)
  return {
    problem,
    rotation,
    ms,
    firstMs,
    firstExcess:
      first && isSameLimit
        ? planValues(problem, first).unfairness / Math.max(1, rotation.values.unfairness) - 1
        : null,
    isProvenIn2s: (inTwo?.rotation ?? rotation).unfairness.proven && (inTwo !== null || timeLimitMs <= 2000),
  }
}

function rowOf(what: string, solved: readonly Solved[]): string {
  const share = (test: (own: Solved) => boolean) =>
    solved.length === 0 ? '–' : `${((100 * solved.filter(test).length) / solved.length).toFixed(0)} %`
  if (solved.length === 0) return `| ${what} | 0 | – | – | – | – | – | – |`
  const excess = solved.flatMap(({ firstExcess }) => (firstExcess === null ? [] : [firstExcess]))
  const gap = ({ value, bound }: Rotation['unfairness']) => (value - bound) / Math.max(1, value)
  return `| ${[
    what,
    solved.length,
    `${quantile(
      solved.map(({ firstMs }) => firstMs),
      0.5,
    ).toFixed(0)} ms`,
    excess.length === 0
      ? '–'
      : `${(100 * quantile(excess, 0.5)).toFixed(1)} / ${(100 * quantile(excess, 0.9)).toFixed(1)} %`,
    share(({ isProvenIn2s }) => isProvenIn2s),
    share(({ rotation }) => rotation.unfairness.proven),
    share(({ rotation }) => gap(rotation.unfairness) <= 0.01),
    share(({ rotation }) => rotation.restLimit.proven),
  ].join(' | ')} |`
}

async function againstPlain(isFull: boolean): Promise<readonly string[]> {
  const lines = [
    '| against plain HiGHS | requests | geometric mean of times | worse values | proven here / there |',
    '|---|---|---|---|---|',
  ]
  for (const turns of [20, 40]) {
    const ratios: number[] = []
    let worse = 0
    let [provenHere, provenThere] = [0, 0]
    for (let seed = 1000; ratios.length < (isFull ? 12 : 2); seed += 1) {
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
    }
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
