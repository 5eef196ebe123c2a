import { describe, expect, it } from 'vitest'
import { checkPlan } from '#rotation/check-plan'
import { findClash } from '#rotation/clash'
import { noSeconds } from '#rotation/fair-seconds'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import { solveRotation } from '#solver/solve-rotation'
import { everyPlan } from '../support/every-plan'
import { randomRotation } from '../support/random-rotation'
import { aRound, problemOf, smallRequest } from '../support/rotation-builder'
import { type SeededRandom, seededRandom } from '../support/seeded-random'

/** Four or five players, three or four turns, so few that every plan can be tried, and something agreed with some of them. */
function tinyProblem(random: SeededRandom): RotationProblem {
  const count = random.chance(0.25) ? 5 : 4
  const keep = count === 5 ? 0 : random.whole(0, 1)
  const stations = [{ attack: 1, defend: 1, keep }]
  const request = smallRequest({
    players: Array.from({ length: count }, (_, index) => ({ id: `p${index}` })),
    rounds: [
      aRound({ turns: 2, stations, keepersStay: random.chance(0.5) }),
      aRound({
        id: 'r2',
        turns: keep === 1 || count === 5 ? 1 : 2,
        turnSeconds: 60,
        stations: [{ attack: 1, defend: 1 }],
      }),
    ],
    restLimit: random.pick([null, 1, 2]),
  })
  const gap = () => random.whole(-6, 6) * 10
  return agreed(
    {
      ...problemOf(request),
      players: problemOf(request).players.map((own) => ({
        ...own,
        gap: { ...noSeconds, attack: gap(), defend: gap(), rest: gap() },
      })),
    },
    random,
  )
}

function agreed(problem: RotationProblem, random: SeededRandom): RotationProblem {
  return {
    ...problem,
    players: problem.players.map((own) => ({
      ...own,
      ...(random.chance(0.3) ? { mostTurns: random.whole(0, Math.ceil(problem.turns.length * 0.7)) } : {}),
      ...(random.chance(0.3) ? { restsAfterTurn: true } : {}),
      ...(random.chance(0.4) ? { restedBefore: random.whole(1, 3) } : {}),
    })),
  }
}

/** Agreements that last longer than a day: a part of what is due, and never the only one who rests. */
function agreedForLong(problem: RotationProblem, random: SeededRandom): RotationProblem {
  return {
    ...problem,
    players: problem.players.map(({ mostTurns: _most, restsAfterTurn: _rests, ...own }) => ({
      ...own,
      ...(random.chance(0.4) ? { dueShare: random.pick([0, 0.25, 0.5, 0.7]) } : {}),
      ...(random.chance(0.3) ? { neverRestsAlone: true } : {}),
    })),
  }
}

function best(problem: RotationProblem, limit: number | null): number {
  let value = Number.POSITIVE_INFINITY
  for (const plan of everyPlan(problem, limit)) value = Math.min(value, planValues(problem, plan).unfairness)
  return value
}

const settings = { seed: 1, timeLimitMs: 20_000, workLimit: null }

describe('plans with what single players agreed to', () => {
  it.each([
    ['for today', 5, (problem: RotationProblem) => problem],
    ['for longer', 6, agreedForLong],
  ] as const)(
    '%s, against every plan there is: the value, the least limit and what is impossible',
    {
      timeout: 60_000,
    },
    async (_what, seed, change) => {
      const random = seededRandom(seed)
      const differ: string[] = []
      let possible = 0
      for (let at = 0; at < 14; at += 1) {
        const problem = change(tinyProblem(random), random)
        const clash = findClash(problem)
        if ((best(problem, null) === Number.POSITIVE_INFINITY) !== clash.length > 0)
          differ.push(`${at}: clash`)
        if (clash.length > 0) continue
        possible += 1
        const found = await solveRotation(problem, { ...settings, began: performance.now() })
        const { used } = found.restLimit
        const truth = best(problem, used)
        if (Math.abs(found.unfairness.value - truth) > 1e-6 * Math.max(1, truth))
          differ.push(`${at}: ${found.unfairness.value} for ${truth}`)
        if (found.unfairness.bound > truth + 1e-6)
          differ.push(`${at}: bound ${found.unfairness.bound} for ${truth}`)
        const asked = problem.restLimit
        if (
          used !== null &&
          asked !== null &&
          used > asked &&
          best(problem, used - 1) < Number.POSITIVE_INFINITY
        )
          differ.push(`${at}: limit ${used} is not the least`)
      }
      expect(differ).toEqual([])
      expect(possible).toBeGreaterThan(6)
    },
  )

  it('keep them at full size', { timeout: 60_000 }, async () => {
    const random = seededRandom(9)
    let kept = 0
    for (let seed = 1; seed <= 12; seed += 1) {
      const plain = problemOf(randomRotation(seed))
      const problem = {
        ...plain,
        players: plain.players.map((own, index) => ({
          ...own,
          ...(index === 0 ? { mostTurns: random.whole(2, 6) } : {}),
          ...(index === 1 ? { restsAfterTurn: true } : {}),
          ...(index === 2 ? { restedBefore: 2 } : {}),
        })),
      }
      if (findClash(problem).length > 0) continue
      const timeLimitMs = seed % 4 === 0 ? 600 : 100
      const found = await solveRotation(problem, { ...settings, timeLimitMs, began: performance.now() })
      expect(checkPlan({ ...problem, restLimit: found.restLimit.used }, found.plan)).toEqual([])
      kept += 1
    }
    expect(kept).toBeGreaterThan(4)
  })
})
