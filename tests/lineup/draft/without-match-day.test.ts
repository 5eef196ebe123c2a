import { describe, expect, it } from 'vitest'
import { matchPlanShape } from '#exchange/match-plan-json'
import { withoutMatchDay } from '#lineup/draft/without-match-day'
import type { MatchPlan, MatchPlanRequest } from '#lineup/match-plan'
import { noWishes } from '#match/format/line-wish'
import { aMatchRequest } from '../../support/match-request-builder'
import { planAtOnce } from '../../support/plan-at-once'

const ids = new Map<string, string>()
const idOf = (id: string) => {
  ids.set(id, ids.get(id) ?? crypto.randomUUID())
  return ids.get(id) ?? ''
}

function aPlan(change: Partial<MatchPlanRequest> = {}): MatchPlan {
  const request = aMatchRequest({ players: 9 })
  const players = request.players.map((player) => ({ ...player, playerId: idOf(player.playerId) }))
  return planAtOnce({ ...request, players, ...change }, (id) => `Name of ${id}`)
}

describe('a plan of a match that is over', () => {
  it('has lost its pairs, held places, lines of single players and what was said around them', () => {
    const [one, other, third, fourth] = ['p1', 'p2', 'p3', 'p4'].map(idOf) as [string, string, string, string]
    const plan = aPlan({ apart: [[one, other]], together: [[third, fourth]] })
    const whole: MatchPlan = {
      ...plan,
      mayMeet: [[one, third]],
      locks: [{ playerId: fourth, start: 0, end: 300, place: 'on' }],
      players: plan.players.map((player) =>
        player.playerId === one ? { ...player, wishes: { ...noWishes, back: 'notYet' } } : player,
      ),
    }
    const after = withoutMatchDay(whole)
    expect(after).toMatchObject({ apart: [], together: [], locks: [], spells: plan.spells })
    expect(after.mayMeet).toBeUndefined()
    expect(JSON.stringify(after)).not.toMatch(/notYet|Name of/)
    expect(Object.values(after.proof.goals).map(({ proven }) => proven)).not.toContain(true)
    expect(matchPlanShape.parse(after)).toEqual(after)
    expect(withoutMatchDay(after)).toEqual(after)
  })

  it('stays as it is where there was nothing of the kind', () => {
    const plan = aPlan()
    expect(withoutMatchDay(plan)).toBe(plan)
  })
})
