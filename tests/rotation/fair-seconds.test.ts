import { describe, expect, it } from 'vitest'
import { fairSeconds } from '#rotation/fair-seconds'
import { resting, seatPlace } from '#rotation/place'
import { planValues, playerFigures } from '#rotation/plan-values'
import { problemOf, smallRequest } from '../support/rotation-builder'

const [A, D, K, R] = [seatPlace(0, 'attack'), seatPlace(0, 'defend'), seatPlace(0, 'keep'), resting]

describe('what players are due in a practice', () => {
  it('is the closed form, turn by turn', () => {
    // Four there, one keeper seat, three able: each able is due 1/3 of keeping, 2/3 × 1/3 of attack, defence and rest;
    // who may not keep 1/3 of each. Two turns of 40 s.
    const players = [{ id: 'p1' }, { id: 'p2' }, { id: 'p3' }, { id: 'p4', keeps: false }]
    const due = fairSeconds(problemOf(smallRequest({ players })))
    expect(due[0]?.keep).toBeCloseTo(80 / 3, 9)
    expect(due[0]?.attack).toBeCloseTo((80 * 2) / 9, 9)
    expect(due[3]?.keep).toBe(0)
    expect(due[3]?.rest).toBeCloseTo(80 / 3, 9)
    expect(due[3]?.level).toBeCloseTo(160 / 3, 9)
  })

  it('is as much as there is to give, in every column', () => {
    const problem = problemOf(
      smallRequest({ players: [{ id: 'p1' }, { id: 'p2' }, { id: 'p3', fromTurn: 2 }, { id: 'p4' }] }),
    )
    const plan = [
      [A, D, -1, K],
      [A, R, D, K],
    ]
    const figures = playerFigures(problem, plan)
    for (const column of ['attack', 'defend', 'keep', 'rest', 'level'] as const) {
      const sum = (what: 'seconds' | 'fairSeconds') =>
        figures.reduce((all, own) => all + own[what][column], 0)
      expect(sum('fairSeconds')).toBeCloseTo(sum('seconds'), 9)
    }
  })
})

describe('the values of a plan', () => {
  it('are the squares of what is left, changes of role and meetings', () => {
    const players = ['p1', 'p2', 'p3', 'p4'].map((id) => ({ id, gap: { attack: id === 'p1' ? 10 : 0 } }))
    const rounds = [
      { id: 'r1', turnSeconds: 40, turns: [0, 1, 2].map(() => ({ stations: [{ attack: 2, defend: 1 }] })) },
    ]
    const problem = problemOf(smallRequest({ players, rounds }))
    const plan = [
      [A, A, D, R],
      [D, A, A, R],
      [R, A, D, A],
    ]
    // Each is due 60 s of attack, 30 of defence, 30 of rest. Attack after: 40, 120, 40, 40 with p1's 10: −10, 60, −20, −20.
    // Defence: 40, 0, 80, 0: 10, −30, 50, −30. Rest: 40, 0, 0, 80: 10, −30, −30, 50.
    const squares = [10, 60, 20, 20, 10, 30, 50, 30, 10, 30, 30, 50].reduce((sum, gap) => sum + gap ** 2, 0)
    const values = planValues(problem, plan)
    expect(values.unfairness).toBeCloseTo(squares, 6)
    expect(values.roleChanges).toBe(3)
    // p1 and p2 once, p2 and p3 once, p2 and p4 once.
    expect(values.mixing).toBe(3)
  })
})
