import type { RotationRequestJson } from '#exchange/rotation-request-shape'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import { everyPlan } from './every-plan'
import { seededRandom } from './seeded-random'

/** At most five players and four turns, with all that a request can ask. */
export function tinyRequest(seed: number): RotationRequestJson {
  const random = seededRandom(seed * 31 + 5)
  const count = random.whole(3, 5)
  const turnCount = random.whole(2, count === 3 ? 4 : count === 4 ? 3 : 2)
  const ids = Array.from({ length: count }, (_, index) => `p${index + 1}`)
  const keep = random.chance(0.7) ? 1 : 0
  const stations =
    random.chance(0.2) && count > 3
      ? [{ attack: 1 }, { attack: 1, keep }]
      : [{ attack: 1, defend: count > 3 ? random.whole(0, 1) : 0, keep }]
  const first = random.whole(1, turnCount)
  const gap = () => random.whole(-6, 6) * 10
  const round = (id: string, turns: number) => ({
    id,
    turnSeconds: random.pick([30, 40, 45]),
    keepersStay: random.chance(0.5),
    turns: Array.from({ length: turns }, () => ({ stations })),
  })
  return {
    format: 'turnbook/rotation-request@1',
    players: ids.map((id, index) => ({
      id,
      keeps: index === 0 || random.chance(0.8),
      ...(index === count - 1 && random.chance(0.4) ? { fromTurn: Math.min(2, turnCount) } : {}),
      gap: { attack: gap(), defend: gap(), keep: gap(), rest: gap() },
    })),
    rounds:
      first === turnCount ? [round('r1', turnCount)] : [round('r1', first), round('r2', turnCount - first)],
    restLimit: random.pick([null, 1, 1, 2]),
    apart: random.chance(0.3) ? [['p2', 'p3']] : [],
    fixed: random.chance(0.3) ? [{ turn: 1, role: 'rest', player: 'p2' }] : [],
  }
}

/** The best value and the least limit by trying every plan; null where there is none at all. */
export function byEveryPlan(
  problem: RotationProblem,
): { readonly value: number; readonly limit: number | null } | null {
  const limits =
    problem.restLimit === null
      ? [null]
      : Array.from({ length: 6 }, (_, more) => (problem.restLimit ?? 0) + more)
  for (const limit of limits) {
    let value = Number.POSITIVE_INFINITY
    for (const plan of everyPlan(problem, limit))
      value = Math.min(value, planValues(problem, plan).unfairness)
    if (Number.isFinite(value)) return { value, limit }
  }
  return null
}
