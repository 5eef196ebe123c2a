import { describe, expect, it } from 'vitest'
import { mixingDesigns } from '#rotation/mixing-designs'
import { planValues } from '#rotation/plan-values'
import { solveRotation } from '#solver/solve-rotation'
import { problemOf } from '../support/rotation-builder'

// v players in blocks of k, each pair together exactly once: (7,3,1), (9,3,1), (13,4,1), (16,4,1) and Kirkman's 15.
// Source: CRC Handbook of Combinatorial Designs, 2nd ed. 2007, by way of Sage's combinat/designs/bibd.py and
// resolvable_bibd.py.
const designs = [
  { players: 7, turns: 7, stations: 1, attack: 3 },
  { players: 9, turns: 12, stations: 1, attack: 3 },
  { players: 9, turns: 4, stations: 3, attack: 3 },
  { players: 13, turns: 13, stations: 1, attack: 4 },
  { players: 16, turns: 20, stations: 1, attack: 4 },
  { players: 16, turns: 5, stations: 4, attack: 4 },
  { players: 15, turns: 7, stations: 5, attack: 3 },
]

function request({ players, turns, stations, attack }: (typeof designs)[number]) {
  return problemOf({
    format: 'turnbook/rotation-request@1',
    players: Array.from({ length: players }, (_, index) => ({ id: `p${index}` })),
    rounds: [
      {
        id: 'r1',
        turnSeconds: 40,
        turns: Array.from({ length: turns }, () => ({
          stations: Array.from({ length: stations }, () => ({ attack })),
        })),
      },
    ],
    restLimit: null,
  })
}

describe('mixing where a design exists', () => {
  it.each(designs)(
    '$players players, $turns turns, $stations stations of $attack: each pair once',
    async (wish) => {
      const problem = request(wish)
      const found = await solveRotation(problem, {
        seed: 1,
        timeLimitMs: 3000,
        workLimit: null,
        began: performance.now(),
      })
      const pairs = (wish.players * (wish.players - 1)) / 2
      expect(found.mixing).toEqual({ value: pairs, bound: pairs, proven: true })
      expect(planValues(problem, found.plan).unfairness).toBeCloseTo(0, 6)
    },
    20_000,
  )

  it('is written down rightly: every two points in one block', () => {
    for (const { players, rows } of mixingDesigns) {
      const pairs = rows
        .flat()
        .flatMap((block) =>
          block.flatMap((one, index) =>
            block.slice(index + 1).map((other) => `${Math.min(one, other)} ${Math.max(one, other)}`),
          ),
        )
      expect(new Set(pairs).size).toBe((players * (players - 1)) / 2)
      expect(pairs.length).toBe(new Set(pairs).size)
    }
  })
})
