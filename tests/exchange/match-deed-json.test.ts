import { describe, expect, it } from 'vitest'
import { matchDeedShape, matchEventShape } from '#exchange/match-deed-json'
import type { MatchDeed } from '#touchline/match-deed'

const id = '01932f3e-0000-7000-8000-000000000001'
const player = 'c56a4180-65aa-42ec-a945-5fd21dec0538'
const on = [{ playerId: player, line: 'middle' as const }]

/** One of each kind; a kind without an example does not compile. */
const examples: { readonly [Kind in MatchDeed['kind']]: Extract<MatchDeed, { kind: Kind }> } = {
  kickOff: { kind: 'kickOff', period: 0, on },
  periodEnd: { kind: 'periodEnd', period: 1 },
  clockStops: { kind: 'clockStops' },
  clockGoesOn: { kind: 'clockGoesOn' },
  changeMade: { kind: 'changeMade', due: 300, on },
  changeDropped: { kind: 'changeDropped', due: 300 },
  places: { kind: 'places', on },
  replan: {
    kind: 'replan',
    from: 433,
    spells: [{ playerId: player, line: 'back', start: 433, end: 600 }],
    sentence: 'Planned anew.',
  },
  register: { kind: 'register', playerId: player, state: 'gone', secondAnswer: true },
  guest: { kind: 'guest', playerId: player, name: 'Zoe Pike' },
  sentOff: { kind: 'sentOff', playerId: player, seconds: null },
  goal: { kind: 'goal', side: 'theirs' },
  fullTime: { kind: 'fullTime' },
  undo: { kind: 'undo', undoes: id },
}

describe('what is tapped beside a match, as a phone sends it', () => {
  it.each(Object.entries(examples))('%s is read as it was written', (_kind, deed) => {
    expect(matchDeedShape.parse(JSON.parse(JSON.stringify(deed)))).toEqual(deed)
  })

  it.each<[what: string, deed: unknown]>([
    ['another kind', { kind: 'roundDone', round: 1, turns: [] }],
    ['a line that there is not', { kind: 'places', on: [{ playerId: player, line: 'wing' }] }],
    ['whose goal it was', { kind: 'goal', side: 'ours', playerId: player }],
    ['a second before the kick-off', { kind: 'changeDropped', due: -1 }],
    ['part of a second', { kind: 'sentOff', playerId: player, seconds: 1.5 }],
    ['more on than any match has', { kind: 'places', on: Array.from({ length: 31 }, () => on[0]) }],
    ['a period that no match has', { kind: 'periodEnd', period: 40 }],
    ['a name of blanks', { kind: 'guest', playerId: player, name: '  ' }],
    ['a player who is no id', { kind: 'register', playerId: 'Ana', state: 'here' }],
    ['a state that there is not', { kind: 'register', playerId: player, state: 'late' }],
  ])('%s is refused', (_what, deed) => {
    expect(matchDeedShape.safeParse(deed).success).toBe(false)
  })

  it('an event carries an id of version 7 and when it was', () => {
    const event = { id, deviceId: player, at: 1_790_000_000_000, deed: examples.fullTime }
    expect(matchEventShape.parse(event)).toEqual(event)
    expect(matchEventShape.safeParse({ ...event, id: player }).success).toBe(false)
    expect(matchEventShape.safeParse({ ...event, at: Number.NaN }).success).toBe(false)
  })
})
