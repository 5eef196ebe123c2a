import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { planValue } from '#ahead/plan-value'
import { problemOfAhead } from '#ahead/problem-of-request'
import { quickAhead } from '#ahead/quick-plan'
import { proofOf } from '#common/proof'
import { planAnswer } from '#exchange/plan-request/plan-answer'
import { readPlanRequest } from '#exchange/plan-request/plan-request'
import { secondPlanCheck } from '../../support/second-plan-check'

const file = new URL('../example/plan-request.json', import.meta.url)

/**
 * Worked by hand. Ten minutes of two against two, then ten of two against one, by four who surely come; the second theme
 * needs the first before it, so the themes are level, more or level, level. An even share of the first is 300 s of
 * attacking and of defending; 1.4 times that is 420 s, so two can make up their 120 s, and the others give them: all gaps
 * are closed, and the balance is 0. Of level, more everyone plays 600 s and 450 s (three places of four), is due 525 s of
 * each theme and is short of 75 s of the second: 300 s over all, 5 minutes. Whoever plays more of it, another plays less,
 * so that no sharing out has less. Level, level would leave 600 s of the second short for each: 40 minutes.
 */
describe('a small term worked by hand', () => {
  it('has the plan and the value that were reckoned', () => {
    const json = JSON.parse(readFileSync(file, 'utf8'))
    const read = readPlanRequest(json)
    if (!read.ok) throw new Error(JSON.stringify(read.reasons))
    const problem = problemOfAhead(read.value.request)
    const plan = quickAhead(problem, { seed: 1 })
    if (!plan) throw new Error('There is a plan.')
    const value = planValue(problem, plan)
    expect(value.balance).toBeCloseTo(0, 6)
    expect(value.themes).toBeCloseTo(5, 6)
    const answer = JSON.parse(
      JSON.stringify(
        planAnswer(problem, { plan, proof: proofOf(value.all, value.all) }, { json, reachable: null }),
      ),
    )
    expect(answer.practices).toMatchObject([
      {
        theme: 'level',
        design: 'twoOnTwo',
        liveSeconds: 600,
        seats: { attackLevel: 1200, defendLevel: 1200 },
        favours: [
          { player: 'p1', column: 'attack', seconds: expect.closeTo(120, 6) },
          { player: 'p2', column: 'attack', seconds: expect.closeTo(120, 6) },
          { player: 'p3', column: 'defend', seconds: expect.closeTo(120, 6) },
          { player: 'p4', column: 'defend', seconds: expect.closeTo(120, 6) },
        ],
      },
      {
        theme: 'more',
        design: 'twoOnOne',
        seats: { attackOutnumbering: 1200, defendOutnumbered: 600 },
        favours: [],
      },
    ])
    expect(answer.players[0].themes.more).toMatchObject({
      seconds: expect.closeTo(450, 3),
      due: expect.closeTo(525, 3),
    })
    expect(secondPlanCheck(json, answer)).toEqual([])
  })
})
