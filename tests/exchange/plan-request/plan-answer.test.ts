import { describe, expect, it } from 'vitest'
import { greedyAhead } from '#ahead/greedy-plan'
import type { AheadPlan } from '#ahead/plan'
import { planValue } from '#ahead/plan-value'
import { problemOfAhead } from '#ahead/problem-of-request'
import { quickAhead } from '#ahead/quick-plan'
import { proofOf } from '#common/proof'
import { planAnswer } from '#exchange/plan-request/plan-answer'
import { readPlanRequest } from '#exchange/plan-request/plan-request'
import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'
import { aPlanRequest } from '../../support/plan-request-builder'
import { randomPlanRequest } from '../../support/random-plan-request'
import { secondPlanCheck } from '../../support/second-plan-check'
import type { PlanAnswer } from '../../support/second-plan-reckoning'

const readOf = (json: PlanRequestJson) => {
  const read = readPlanRequest(json)
  if (!read.ok) throw new Error(JSON.stringify(read.reasons))
  return { problem: problemOfAhead(read.value.request) }
}
/** As it is written, read again. */
const answerOf = (
  json: PlanRequestJson,
  make: (problem: ReturnType<typeof problemOfAhead>) => AheadPlan | null,
) => {
  const { problem } = readOf(json)
  const plan = make(problem)
  if (!plan) return null
  const proof = proofOf(planValue(problem, plan).all, 0)
  return JSON.parse(
    JSON.stringify(planAnswer(problem, { plan, proof }, { json, reachable: null })),
  ) as PlanAnswer
}
const quick = (problem: ReturnType<typeof problemOfAhead>) => quickAhead(problem, { seed: 1, steps: 100 })

describe('the answer for the weeks ahead', () => {
  it('is what a second reckoning finds, for requests of every kind', () => {
    let answered = 0
    for (let seed = 1; seed <= 16; seed++) {
      const json = randomPlanRequest(seed)
      const answer = answerOf(json, seed % 2 === 0 ? quick : greedyAhead)
      if (!answer) continue
      answered++
      expect(secondPlanCheck(json, answer), `seed ${seed}`).toEqual([])
    }
    expect(answered).toBeGreaterThan(8)
  })

  it('leaves out practices on days without practice, and says so', () => {
    const answer = answerOf(aPlanRequest(), quick)
    expect(answer?.leftOut).toEqual([{ id: 's4', date: '2026-10-20' }])
    expect(answer?.practices.map(({ id, week, isFirm }) => [id, week, isFirm])).toEqual([
      ['s1', 5, true],
      ['s2', 5, true],
      ['s3', 6, true],
      ['s5', 8, true],
      ['s6', 9, false],
    ])
  })

  it('is held to its rules and sums: what is changed by hand is found', () => {
    const json = aPlanRequest()
    const changed = (change: (answer: PlanAnswer) => void) => {
      const answer = answerOf(json, quick)
      if (!answer) throw new Error('There is a plan.')
      change(answer)
      return secondPlanCheck(json, answer)
    }
    expect(changed(() => undefined)).toEqual([])
    expect(
      changed(({ practices: [first] }) => Object.assign(first ?? {}, { theme: 'together', design: 'd1' })),
    ).not.toEqual([])
    expect(changed(({ value }) => Object.assign(value, { value: value.value - 1 }))).not.toEqual([])
    expect(changed(({ value }) => Object.assign(value, { bound: value.value + 1 }))).not.toEqual([])
    expect(
      changed(({ practices: [first] }) => Object.assign(first?.players[0]?.lean ?? {}, { keep: 5 })),
    ).not.toEqual([])
    expect(
      changed(({ players: [first] }) => Object.assign(first?.columns.attack ?? {}, { gapAfter: 1 })),
    ).not.toEqual([])
    expect(changed(({ practices: [first] }) => Object.assign(first ?? {}, { week: 4 }))).not.toEqual([])
  })
})
