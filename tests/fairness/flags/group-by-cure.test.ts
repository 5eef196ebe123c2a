import { describe, expect, it } from 'vitest'
import { groupByCure, type RoundToGive } from '#fairness/flags/group-by-cure'
import type { Flag } from '#fairness/flags/raise-flags'
import { flagRules } from '#fairness/flags/registry'
import { giveRounds } from '#fairness/flags/round-cure'

const round: RoundToGive = { turns: 6, stations: 2, medianTurnSeconds: 60 }

function flag(playerId: string, rule: string, more: Partial<Flag> = {}): Flag {
  return {
    playerId,
    rule,
    scope: 'practice',
    subject: '',
    // Three turns of 60 s.
    gapSeconds: -780,
    toleranceSeconds: 600,
    size: 780,
    since: '2026-09-01',
    sinceSessionId: 's0',
    isClosing: false,
    cure: { kind: 'moreTurns', turns: 3, seconds: 180 },
    ...more,
  }
}

const seven = [
  flag('ana', 'attackShort'),
  flag('ana', 'situationShort', { subject: 'outnumbering' }),
  flag('bo', 'attackShort'),
  flag('bo', 'situationNeverMet', { subject: 'outnumbering' }),
  flag('cy', 'attackShort'),
  flag('di', 'defendShort'),
  flag('ed', 'matchMinutesShort', { scope: 'match' }),
]

describe('what to do today', () => {
  it('is first the round that does most', () => {
    const cures = groupByCure(seven, round)
    expect(cures[0]).toMatchObject({
      kind: 'round',
      place: { role: 'attack', situation: 'outnumbering' },
      rounds: 1,
      playerIds: ['ana', 'bo', 'cy'],
      clears: seven.slice(0, 5),
      starts: [],
      of: 7,
    })
    expect(cures.slice(1)).toMatchObject([
      { kind: 'round', place: { role: 'defend' }, playerIds: ['di'], clears: [seven[5]] },
      { kind: 'group', group: 'match', playerIds: ['ed'], startIn: null },
    ])
  })

  it('is three things at the most, and no flag in two of them', () => {
    const many = [
      ...seven,
      flag('gus', 'themeShort', { subject: 't1' }),
      flag('flo', 'restOver', { gapSeconds: 900 }),
    ]
    const cures = groupByCure(many, round)
    expect(cures).toHaveLength(3)
    const named = cures.flatMap((cure) =>
      cure.kind === 'round' ? [...cure.clears, ...cure.starts] : cure.flags,
    )
    expect(new Set(named).size).toBe(named.length)
  })

  it('keeps a place for goal-keeping and safety', () => {
    const unwilling = flag('flo', 'keptUnwillingly', { gapSeconds: 60, toleranceSeconds: 0 })
    const cures = groupByCure(
      [...seven, flag('gus', 'situationShort', { subject: 'level' }), unwilling],
      round,
    )
    expect(cures.map((cure) => cure.kind)).toEqual(['round', 'round', 'group'])
    expect(cures[2]).toMatchObject({ group: 'goal', playerIds: ['flo'], flags: [unwilling] })
  })

  it('does not pass over those far behind: a round makes a start', () => {
    // 100 turns of attacking, and two turns of it.
    const far = flag('ana', 'attackShort', { gapSeconds: -6600 })
    const near = flag('bo', 'attackShort', { gapSeconds: -720 })
    expect(groupByCure([far, near], round)).toMatchObject([
      { kind: 'round', rounds: 1, clears: [near], starts: [far] },
    ])
    expect(groupByCure([far], round)).toMatchObject([
      { kind: 'group', group: 'attack', flags: [far], startIn: { role: 'attack' } },
    ])
  })

  it('takes two or three rounds where one clears nothing', () => {
    const nineTurns = flag('ana', 'attackShort', { gapSeconds: -1140 })
    expect(groupByCure([nineTurns], round)).toMatchObject([{ kind: 'round', rounds: 2, clears: [nineTurns] }])
  })

  it('never gives more turns than the round has places for', () => {
    // One station of one against two: six places a round; each needs three turns, so two players at the most.
    const outnumbered = ['ana', 'bo', 'cy'].map((id) =>
      flag(id, 'situationShort', { subject: 'outnumbered' }),
    )
    const given = giveRounds(outnumbered, {
      round: { ...round, stations: 1 },
      ruleOf: new Map(flagRules.map((rule) => [rule.name, rule])),
      place: { role: 'attack', situation: 'outnumbered' },
      rounds: 1,
    })
    expect(given).toMatchObject({ playerIds: ['ana', 'bo'], worth: 2 })
  })

  it('leaves quiet notes out, and has nothing to say of nothing', () => {
    expect(groupByCure([flag('ana', 'passedRunning', { gapSeconds: 0 })], round)).toEqual([])
    expect(groupByCure([], round)).toEqual([])
  })

  it('groups by need when nothing is known of rounds', () => {
    expect(groupByCure(seven, null).map((cure) => cure.kind === 'group' && cure.group)).toEqual([
      'attack',
      'situation',
      'defend',
    ])
  })
})
