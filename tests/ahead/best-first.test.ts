import { describe, expect, it } from 'vitest'
import { bestFirst } from '#ahead/best-first'
import type { SolvedAhead } from '#ahead/plan'
import { randomAhead } from '../support/random-ahead'

const problem = randomAhead(3, { practices: 3, rules: 0 })
const solvedAt = (offer: number, value: number, bound: number): SolvedAhead => ({
  plan: { choices: [offer, 0, 0], leans: [] },
  proof: { value, bound, proven: false },
})
const themeAt = (offer: number) => problem.practices[0]?.offers[offer]?.theme ?? -1

describe('the best of a plan and those beside it', () => {
  const others = [
    { theme: themeAt(1), solved: solvedAt(1, 110, 20), costs: 10 },
    { theme: themeAt(2), solved: solvedAt(2, 130, 95), costs: 30 },
  ]

  it('is the plan itself where none is better', () => {
    const beside = { solved: solvedAt(0, 100, 90), others }
    expect(bestFirst(problem, 0, beside)).toEqual(beside)
    expect(bestFirst(problem, 0, { ...beside, others: [] }).others).toEqual([])
  })

  it('takes its place where one is better; the plan then stands among the others, with what it costs more', () => {
    const { solved, others: left } = bestFirst(problem, 0, { solved: solvedAt(0, 115, 90), others })
    expect(solved).toEqual({ ...solvedAt(1, 110, 90) })
    expect(left.map(({ theme, costs }) => [theme, costs])).toEqual([
      [themeAt(0), 5],
      [themeAt(2), 20],
    ])
  })
})
