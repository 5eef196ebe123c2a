import { describe, expect, it } from 'vitest'
import { checkLineUp } from '#lineup/check-line-up'
import { isBetterLineUp } from '#lineup/compare-line-ups'
import { equalTimeChanges, greatestCommon } from '#lineup/equal-time-changes'
import { lineUpGoals } from '#lineup/line-up'
import { lineUpBounds } from '#lineup/line-up-bounds'
import { lineUpValues } from '#lineup/line-up-values'
import type { LineUpProblem } from '#lineup/problem'
import { quickLineUp } from '#lineup/quick-line-up'
import { solveLineUp } from '#solver/solve-line-up'
import { solveLineUpPlainly } from '../bench/plain-line-up'
import { laterLineUp } from '../support/later-line-up'
import { smallLineUp } from '../support/line-up-builder'
import { openLines } from '../support/open-lines'
import { randomLineUp } from '../support/random-line-up'

const solve = (problem: LineUpProblem, seed = 1) =>
  solveLineUp(problem, { seed, timeLimitMs: 6000, workLimit: null, began: performance.now() })

describe('a solved line-up', { timeout: 60_000 }, () => {
  // Outside: the same goals as plain models, player by window, in which nothing of ours but HiGHS takes part.
  it('is as good as plain models find, or both find that there is none', async () => {
    let compared = 0
    for (const seed of [8, 9, 14, 17, 19, 21]) {
      const problem = openLines(
        randomLineUp(seed, { players: 7, aSide: 5, periods: 2, areEqual: seed === 8 }),
      )
      const plain = await solveLineUpPlainly(problem, 8000)
      if (plain.kind === 'open') continue
      const answer = await solve(problem)
      expect(answer.kind).toBe(plain.kind)
      if (answer.kind !== 'solved') continue
      compared += 1
      for (const goal of lineUpGoals) {
        const { value, proven } = answer.lineUp.proofs[goal]
        const expected = plain.values[goal]
        expect(Math.abs(value - expected)).toBeLessThan(1e-3 * Math.max(1, expected))
        expect(proven).toBe(true)
      }
    }
    expect(compared).toBeGreaterThan(2)
  })

  // Outside: the number that was proven by hand, S − gcd(S, m · n).
  it.each([
    [6, 4, 2],
    [7, 5, 2],
    [8, 6, 2],
    [9, 6, 3],
    [10, 7, 2],
  ])(
    'gives %i players exactly equal time, %i on, %i periods, with the fewest changes',
    async (count, onPitch, periods) => {
      // As many windows as let everybody have the same.
      const windows = count / greatestCommon(count, periods * onPitch)
      const places = { keeper: 1, back: 1, middle: onPitch - 2, forward: 0 }
      const answer = await solve(openLines(smallLineUp({ count, places, periods, windows })))
      if (answer.kind !== 'solved') throw new Error(answer.kind)
      const { minutes, changes } = answer.lineUp.proofs
      expect(minutes.value).toBeCloseTo(0, 6)
      expect(changes.bound).toBeGreaterThanOrEqual(equalTimeChanges({ players: count, onPitch, periods }))
      expect(changes.value).toBeGreaterThanOrEqual(changes.bound)
    },
  )

  it('keeps every rule and no value is below its bound, from the start and in the middle', async () => {
    for (let seed = 31; seed < 35; seed += 1) {
      const whole = randomLineUp(seed, { players: 9, aSide: 6, periods: 2, areEqual: seed % 3 === 0 })
      const before = quickLineUp(whole, { seed: 1 })
      const problem = before && seed % 2 === 0 ? laterLineUp(whole, before, 2) : whole
      const quick = quickLineUp(problem, { seed: 1 })
      const answer = await solve(problem)
      if (answer.kind === 'impossible') {
        expect(quick).toBeNull()
        continue
      }
      const { plan, proofs } = answer.lineUp
      expect(checkLineUp(problem, plan)).toEqual([])
      const values = lineUpValues(problem, plan)
      if (quick) expect(isBetterLineUp(lineUpValues(problem, quick), values)).toBe(false)
      const easy = lineUpBounds(problem, values)
      for (const goal of lineUpGoals) {
        expect(proofs[goal].value).toBeCloseTo(values[goal], 6)
        expect(proofs[goal].bound).toBeLessThanOrEqual(values[goal])
        if (goal === 'promise' || goal === 'minutes')
          expect(values[goal]).toBeGreaterThanOrEqual(easy[goal] - 1e-3)
      }
    }
  })

  it('is no worse when more changes are borne, and the same for the same seed', async () => {
    const problem = openLines(randomLineUp(6, { players: 9, aSide: 6, periods: 2, areEqual: true }))
    const bearing = (mostChanges: number | null) =>
      solve({
        ...problem,
        rules: { ...problem.rules, leastSpellSeconds: 0, longestOffSeconds: null, mostChanges },
      })
    const minutes: number[] = []
    for (const most of [0, 3, 6, null]) {
      const answer = await bearing(most)
      if (answer.kind !== 'solved') throw new Error(answer.kind)
      expect(answer.lineUp.proofs.minutes.proven).toBe(true)
      minutes.push(answer.lineUp.proofs.minutes.value)
    }
    expect(minutes).toEqual([...minutes].sort((one, other) => other - one))
    expect(minutes[0]).toBeGreaterThan(minutes[3] ?? 0)
    expect(await bearing(3)).toEqual(await bearing(3))
  })

  it('says why there can be none, and is content with a plan that is there', async () => {
    const few = smallLineUp({ count: 2 })
    expect(await solve(few)).toMatchObject({ kind: 'impossible', clash: [{ kind: 'places' }] })
    // One of three must come off after ten minutes at most, and nobody may before twelve: rules that clash only together.
    const bound = smallLineUp({
      periods: 1,
      windows: 4,
      rules: { keeperForPeriod: true, leastSpellSeconds: 900, longestOffSeconds: 300, mostChanges: 0 },
    })
    expect(await solve(bound)).toMatchObject({ kind: 'impossible', clash: [{ kind: 'rules' }] })
  })
})
