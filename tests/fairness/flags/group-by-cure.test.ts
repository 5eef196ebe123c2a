import { describe, expect, it } from 'vitest'
import { cureTodaySentence } from '#fairness/flags/cure-today-sentence'
import { groupByCure, type RoundToGive } from '#fairness/flags/group-by-cure'
import type { Flag } from '#fairness/flags/raise-flags'

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
  it('is first the round that clears most flags, in a sentence', () => {
    const cures = groupByCure(seven, round)
    expect(cures[0]).toMatchObject({
      kind: 'round',
      place: { role: 'attack', situation: 'outnumbering' },
      rounds: 1,
      playerIds: ['ana', 'bo', 'cy'],
      of: 7,
    })
    expect(cures.map(cureTodaySentence)).toEqual([
      'One round of two against one with these three attacking clears five of seven.',
      'One round of one against two with this one defending clears one of seven.',
      'One needs more even time in matches.',
    ])
  })

  it('is three things at the most, and no flag in two of them', () => {
    const many = [
      ...seven,
      flag('flo', 'keepOver', { gapSeconds: 900 }),
      flag('gus', 'themeShort', { subject: 't1' }),
    ]
    const cures = groupByCure(many, round)
    expect(cures).toHaveLength(3)
    const named = cures.flatMap((cure) => (cure.kind === 'round' ? cure.clears : cure.flags))
    expect(new Set(named).size).toBe(named.length)
  })

  it('never gives more turns than the round has places for', () => {
    // One station of one against two: six places a round; each needs three turns, so two players at the most.
    const outnumbered = ['ana', 'bo', 'cy'].map((id) =>
      flag(id, 'situationShort', { subject: 'outnumbered' }),
    )
    const [first] = groupByCure(outnumbered, { ...round, stations: 1 })
    expect(first?.kind === 'round' && first.place.role === 'attack' && first.playerIds).toHaveLength(2)
  })

  it('takes more rounds for who is further behind, and leaves what no three rounds can do', () => {
    const nineTurns = flag('ana', 'attackShort', { gapSeconds: -1140 })
    expect(groupByCure([nineTurns], round)[0]).toMatchObject({ kind: 'round', rounds: 2 })
    const hundredTurns = flag('ana', 'attackShort', { gapSeconds: -6600 })
    expect(groupByCure([hundredTurns], round)).toMatchObject([{ kind: 'group', group: 'attack' }])
  })

  it('leaves quiet notes out, and has nothing to say of nothing', () => {
    expect(groupByCure([flag('ana', 'passedRunning', { gapSeconds: 0 })], round)).toEqual([])
    expect(groupByCure([], round)).toEqual([])
  })

  it('groups by need when nothing is known of rounds', () => {
    expect(groupByCure(seven, null).map((cure) => cure.kind)).toEqual(['group', 'group', 'group'])
  })
})
