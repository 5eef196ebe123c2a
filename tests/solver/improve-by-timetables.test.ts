import { describe, expect, it } from 'vitest'
import { seededChance } from '#common/chance'
import { checkPlan } from '#rotation/check-plan'
import { findClash } from '#rotation/clash'
import { mayTakeIn } from '#rotation/may-take'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import { setDeadline } from '#solver/deadline'
import { boundAtCenter, generateColumns } from '#solver/generate-columns'
import { openGeneration } from '#solver/generation'
import { loadSolver } from '#solver/highs'
import { improveByTimetables } from '#solver/improve-by-timetables'
import type { Search } from '#solver/search'
import { timetableRows } from '#solver/timetable-rows'
import { everyPlan } from '../support/every-plan'
import { problemOf } from '../support/rotation-builder'
import { byEveryPlan, tinyRequest } from '../support/tiny-rotation'

const tiny = Array.from({ length: 40 }, (_, index) => 100 + index).flatMap((seed) => {
  const problem = problemOf(tinyRequest(seed))
  if (findClash(problem).length > 0) return []
  const truth = byEveryPlan(problem)
  return truth ? [{ seed, problem, truth }] : []
})

function searchOf(problem: RotationProblem, seed: number): Search {
  return {
    problem,
    mayTake: mayTakeIn(problem),
    deadline: setDeadline({ began: performance.now(), timeLimitMs: 20_000, workLimit: null }),
    chance: seededChance(seed),
    seed,
  }
}

const freely = {
  mayGoOn: () => true,
  leftMs: () => 20_000,
  onWork: () => undefined,
  enough: Number.POSITIVE_INFINITY,
}

describe('whole timetables of single players', () => {
  it('never have a bound above the best of all plans, at any stage', async () => {
    const solver = await loadSolver()
    for (const { seed, problem, truth } of tiny) {
      const rows = timetableRows(problem, mayTakeIn(problem), truth.limit)
      const generation = openGeneration(solver, rows)
      const most = truth.value / rows.unitSeconds ** 2 + 1e-6
      for (const mostRounds of [1, 2, 100]) {
        const { bound } = generateColumns(generation, { ...freely, mostWidth: 60, mostRounds })
        expect(bound, `${seed}`).toBeLessThanOrEqual(most)
        expect(boundAtCenter(generation, freely)?.bound).toBeLessThanOrEqual(most)
      }
      const end = generateColumns(generation, { ...freely, mostWidth: 1e6 })
      expect(end.isDone).toBe(true)
      expect(end.objective).toBeCloseTo(end.bound, 3)
      expect(end.bound, `${seed}`).toBeLessThanOrEqual(most)
      generation.master.dispose()
    }
  })

  it('lead from any plan to the best of all, and prove it', { timeout: 60_000 }, async () => {
    const solver = await loadSolver()
    const open: number[] = []
    for (const { seed, problem, truth } of tiny) {
      const [plan] = everyPlan(problem, truth.limit)
      if (!plan) throw new Error('There is a best plan, so there is a first.')
      const value = planValues(problem, plan).unfairness
      const found = improveByTimetables(
        searchOf(problem, seed),
        solver,
        { plan, value, bound: 0 },
        { restLimit: truth.limit, untilMs: 0 },
      )
      expect(checkPlan({ ...problem, restLimit: truth.limit }, found.plan)).toEqual([])
      expect(found.value).toBeCloseTo(planValues(problem, found.plan).unfairness, 6)
      expect(found.bound, `${seed}`).toBeLessThanOrEqual(truth.value + 1e-6 * Math.max(1, truth.value))
      if (found.value - found.bound > 1e-6 * Math.max(1, found.value)) open.push(seed)
      else expect(found.value, `${seed}`).toBeCloseTo(truth.value, 3)
    }
    // Pairs apart at several stations are not in the timetables: there a proof may be missing.
    expect(open.length).toBeLessThanOrEqual(2)
  })
})
