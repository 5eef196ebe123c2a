import { describe, expect, it } from 'vitest'
import { rulesLetGo } from '#lineup/draft/rules-let-go'
import { placesInstead, smallerPromise, withoutOwnRules } from '#lineup/draft/ways-out-of-match'
import { findLineUpClash } from '#lineup/find-line-up-clash'
import { problemOfMatch } from '#lineup/problem-of-match'
import { aMatchRequest, nameOf } from '../../support/match-request-builder'

describe('what could be asked instead', () => {
  it('is fewer places where too few came, and then nothing stands in the way', () => {
    const request = aMatchRequest({ players: 6 })
    const [choice] = placesInstead(request, findLineUpClash(problemOfMatch(request)))
    expect(choice?.words).toBe('with six a side')
    if (!choice) throw new Error('no choice')
    expect(choice.request.format.aSide).toBe(6)
    expect(findLineUpClash(problemOfMatch(choice.request))).toEqual([])
  })

  it('is nobody in goal where nobody may keep it', () => {
    const request = aMatchRequest({ players: 9 })
    const players = request.players.map((player) => ({ ...player, keeps: false }))
    const asked = { ...request, players }
    const [choice] = placesInstead(asked, findLineUpClash(problemOfMatch(asked)))
    expect(choice?.request.places).toEqual({ keeper: 0, back: 2, middle: 4, forward: 1 })
    expect(choice && findLineUpClash(problemOfMatch(choice.request))).toEqual([])
  })

  it('is a promise that the places have time for: seven of ten have 70 % each, seven of nine 75 %', () => {
    const promised = (players: number) => {
      const request = { ...aMatchRequest({ players }), leastShare: 0.9 }
      return smallerPromise(request, problemOfMatch(request)).map(({ request: next }) => next.leastShare)
    }
    expect(promised(10)).toEqual([0.7])
    expect(promised(9)).toEqual([0.75])
    expect(promised(7)).toEqual([])
  })

  it('lets go each rule that is set, and no other', () => {
    const request = aMatchRequest({ players: 10 })
    expect(rulesLetGo(request, nameOf).map(({ key }) => key)).toEqual(['keeperForPeriod'])
    const strict = {
      ...request,
      rules: { ...request.rules, leastSpellSeconds: 600, mostChanges: 4 },
      apart: [['p1', 'p2']] as const,
      locks: [{ playerId: 'p3', start: 0, end: 300, place: 'off' }] as const,
    }
    const choices = rulesLetGo(strict, nameOf)
    expect(choices.map(({ words }) => words)).toEqual([
      'without staying on for 10 minutes at least',
      'with as many changes as it takes',
      'with a change of goalkeeper inside a period',
      'with Name 1 and Name 2 on together',
      'with no place held for Name 3',
    ])
    expect(choices.find(({ key }) => key === 'apart 0')?.request).toMatchObject({
      apart: [],
      mayMeet: [['p1', 'p2']],
    })
    expect(withoutOwnRules(strict).request.rules).toMatchObject({ leastSpellSeconds: 0, mostChanges: null })
  })
})
