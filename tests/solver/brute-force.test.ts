import { describe, expect, it } from 'vitest'
import { findClash } from '#rotation/clash'
import { solveRotation } from '#solver/solve-rotation'
import { problemOf } from '../support/rotation-builder'
import { byEveryPlan, tinyRequest } from '../support/tiny-rotation'

describe('against every plan there is', () => {
  it('the value, the least limit and what is impossible are the same', { timeout: 120_000 }, async () => {
    const differ: string[] = []
    let impossible = 0
    for (let seed = 1; seed <= 60; seed += 1) {
      const problem = problemOf(tinyRequest(seed))
      const truth = byEveryPlan(problem)
      const clash = findClash(problem)
      if ((truth === null) !== clash.length > 0) differ.push(`${seed}: impossible ${truth === null}`)
      if (truth === null || clash.length > 0) {
        impossible += 1
        continue
      }
      const found = await solveRotation(problem, {
        seed,
        timeLimitMs: 20_000,
        workLimit: null,
        began: performance.now(),
      })
      const { value, bound, proven } = found.unfairness
      if (Math.abs(value - truth.value) > 1e-6 * Math.max(1, value))
        differ.push(`${seed}: ${value} for ${truth.value}`)
      if (bound > truth.value + 1e-6 || !proven) differ.push(`${seed}: bound ${bound} for ${truth.value}`)
      if (found.restLimit.leastPossible !== truth.limit)
        differ.push(`${seed}: limit ${found.restLimit.leastPossible} for ${truth.limit}`)
      if (!found.restLimit.proven) differ.push(`${seed}: limit not proven`)
    }
    expect(differ).toEqual([])
    expect(impossible).toBeLessThan(20)
  })
})
