import { describe, expect, it } from 'vitest'
import { checkPlan } from '#rotation/check-plan'
import { away, resting, seatPlace } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { apartRule } from '#rotation/rules/apart-rule'
import { fixedRule } from '#rotation/rules/fixed-rule'
import { keepersRule } from '#rotation/rules/keepers-rule'
import { keepersStayRule } from '#rotation/rules/keepers-stay-rule'
import { presenceRule } from '#rotation/rules/presence-rule'
import { restLimitRule } from '#rotation/rules/rest-limit-rule'
import { seatsRule } from '#rotation/rules/seats-rule'
import { sidesRule } from '#rotation/rules/sides-rule'
import { aRound, problemOf, smallRequest } from '../../support/rotation-builder'

const [A, D, K, R] = [seatPlace(0, 'attack'), seatPlace(0, 'defend'), seatPlace(0, 'keep'), resting]
/** p1 attacks, p2 defends, p3 keeps, p4 rests, twice. */
const steady: RotationPlan = [
  [A, D, K, R],
  [A, D, K, R],
]
const players = ['p1', 'p2', 'p3', 'p4'].map((id) => ({ id }))

describe('each rule by itself', () => {
  it('has nothing against a plan that keeps them all', () => {
    expect(checkPlan(problemOf(smallRequest()), steady)).toEqual([])
  })

  it('presence: a place for one who is away, and none for one who is there', () => {
    const problem = problemOf(smallRequest({ players: [...players.slice(0, 3), { id: 'p4', fromTurn: 2 }] }))
    expect(presenceRule(problem, steady)).toEqual([{ rule: 'presence', turn: 0, players: [3] }])
    const gone: RotationPlan = [
      [A, D, K, away],
      [A, D, K, away],
    ]
    expect(presenceRule(problem, gone)).toEqual([{ rule: 'presence', turn: 1, players: [3] }])
  })

  it('seats: one left empty, one taken twice, one that is not there', () => {
    const problem = problemOf(smallRequest())
    const plan = (places: readonly number[]) => [places, steady[1] ?? []]
    expect(seatsRule(problem, plan([A, D, R, R]))).toEqual([{ rule: 'seats', turn: 0, players: [] }])
    expect(seatsRule(problem, plan([A, A, K, D]))).toEqual([{ rule: 'seats', turn: 0, players: [] }])
    expect(seatsRule(problem, plan([A, D, K, seatPlace(1, 'attack')]))).toHaveLength(1)
  })

  it('keepers: one who may not keep does', () => {
    const problem = problemOf(
      smallRequest({ players: [...players.slice(0, 2), { id: 'p3', keeps: false }, { id: 'p4' }] }),
    )
    expect(keepersRule(problem, steady).map(({ turn }) => turn)).toEqual([0, 1])
  })

  it('sides: the wrong one attacks; keeping and resting are open', () => {
    const rounds = [aRound({ turns: 2, sides: { attack: ['p2'], defend: ['p2', 'p1'] } })]
    expect(sidesRule(problemOf(smallRequest({ rounds })), steady)).toEqual([
      { rule: 'sides', turn: 0, players: [0] },
      { rule: 'sides', turn: 1, players: [0] },
    ])
  })

  it('apart: two at one station, whatever their roles; not where one rests', () => {
    const problem = problemOf(
      smallRequest({
        apart: [
          ['p1', 'p3'],
          ['p2', 'p4'],
        ],
      }),
    )
    expect(apartRule(problem, steady).map(({ turn, players: who }) => [turn, ...who])).toEqual([
      [0, 0, 2],
      [1, 0, 2],
    ])
  })

  it('fixed: a seat and a rest', () => {
    const fixed = [
      { turn: 1, station: 1, role: 'keep' as const, player: 'p3' },
      { turn: 2, role: 'rest' as const, player: 'p1' },
    ]
    expect(fixedRule(problemOf(smallRequest({ fixed })), steady)).toEqual([
      { rule: 'fixed', turn: 1, players: [0] },
    ])
  })

  it('rest limit: every turn beyond it; a turn away ends the run', () => {
    const rounds = [aRound({ turns: 4 })]
    const waits = [...steady, ...steady]
    const problem = (present: [number, number][]) =>
      problemOf(
        smallRequest({ rounds, restLimit: 2, players: [...players.slice(0, 3), { id: 'p4', present }] }),
      )
    expect(restLimitRule(problem([[1, 4]]), waits).map(({ turn }) => turn)).toEqual([2, 3])
    const withGap = waits.map((places, turn) => (turn === 2 ? [...places.slice(0, 3), away] : places))
    expect(
      restLimitRule(
        problem([
          [1, 2],
          [4, 4],
        ]),
        withGap,
      ),
    ).toEqual([])
    expect(restLimitRule({ ...problem([[1, 4]]), restLimit: null }, waits)).toEqual([])
  })
})

describe('keepers who stay', () => {
  const round = (turns: number) => [aRound({ turns, keepersStay: true })]
  const swap: RotationPlan = [
    [A, D, K, R],
    [A, D, R, K],
  ]

  it('may not change within the round', () => {
    expect(keepersStayRule(problemOf(smallRequest({ rounds: round(2) })), swap)).toEqual([
      { rule: 'keepersStay', turn: 1, players: [2, 3] },
    ])
    expect(keepersStayRule(problemOf(smallRequest({ rounds: [aRound({ turns: 2 })] })), swap)).toEqual([])
  })

  it('may change from round to round', () => {
    const rounds = [
      aRound({ turns: 1, keepersStay: true }),
      aRound({ id: 'r2', turns: 1, keepersStay: true }),
    ]
    expect(keepersStayRule(problemOf(smallRequest({ rounds })), swap)).toEqual([])
  })

  it('are followed by another only once they have gone, who then stays though a late comer could', () => {
    const some = [
      { id: 'p1' },
      { id: 'p2' },
      {
        id: 'p3',
        present: [
          [1, 1],
          [3, 3],
        ] as [number, number][],
      },
      { id: 'p4' },
    ]
    const problem = problemOf(smallRequest({ players: some, rounds: round(3) }))
    const stays: RotationPlan = [
      [A, D, K, R],
      [A, D, away, K],
      [A, D, R, K],
    ]
    expect(keepersStayRule(problem, stays)).toEqual([])
    const comesBack = [...stays.slice(0, 2), [A, D, K, R]]
    expect(keepersStayRule(problem, comesBack)).toEqual([{ rule: 'keepersStay', turn: 2, players: [3, 2] }])
  })

  it('pass over turns without a keeper seat', () => {
    const turns = [
      { attack: 1, defend: 1, keep: 1 },
      { attack: 1, defend: 1 },
      { attack: 1, defend: 1, keep: 1 },
    ]
    const rounds = [
      { ...aRound({ keepersStay: true }), turns: turns.map((station) => ({ stations: [station] })) },
    ]
    const plan: RotationPlan = [
      [A, D, K, R],
      [A, D, R, R],
      [A, D, R, K],
    ]
    expect(keepersStayRule(problemOf(smallRequest({ rounds })), plan)).toEqual([
      { rule: 'keepersStay', turn: 2, players: [2, 3] },
    ])
  })
})
