import { expect, it } from 'vitest'
import { longInGoal } from '#planning/long-in-goal'
import { planBalance } from '#planning/plan-balance'
import { problemOfRequest } from '#planning/problem-of-request'
import { seatPlace } from '#rotation/place'
import { aPlanRequest, aPlanRound } from '../support/plan-builder'

it('names who is in goal for more than the part of its time that the club’s rules allow, and nobody at just that part', () => {
  const stations = [{ attack: 1, defend: 1, keep: 1 }]
  const request = aPlanRequest({ players: 3, rounds: [aPlanRound({ turnCount: 4, stations })] })
  const [attack, defend, keep] = [seatPlace(0, 'attack'), seatPlace(0, 'defend'), seatPlace(0, 'keep')]
  const turn = (...places: readonly [number, number, number]) => places
  const balancesOf = (plan: readonly (readonly number[])[]) =>
    planBalance(problemOfRequest(request), { plan, request })
  const half = [
    turn(keep, attack, defend),
    turn(keep, attack, defend),
    turn(attack, keep, defend),
    turn(attack, defend, keep),
  ]
  expect(longInGoal(balancesOf(half), 0.5)).toEqual([])
  const most = [...half.slice(0, 3), turn(keep, attack, defend)]
  expect(longInGoal(balancesOf(most), 0.5)).toEqual([{ playerId: 'p1', turns: 3, of: 4 }])
})
