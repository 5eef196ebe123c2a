import { describe, expect, it } from 'vitest'
import { matchSpans } from '#exposure/match-spans'
import { practiceSpans } from '#exposure/practice-spans'
import { situationsAt } from '#exposure/situation'

const here = (playerId: string, from: number, to: number) => ({ playerId, from, to })

describe('a situation', () => {
  it.each([
    [2, 1, 'outnumbering', 'outnumbered'],
    [1, 2, 'outnumbered', 'outnumbering'],
    [3, 3, 'level', 'level'],
    [2, 0, null, null],
    [0, 2, null, null],
    [0, 0, null, null],
  ])('of %i attacking against %i', (attackers, defenders, attack, defend) => {
    expect(situationsAt({ attackers, defenders })).toEqual({ attack, defend })
  })
})

describe('the spans of a practice', () => {
  it('put the seats of all stations of one situation together and let the others who are there rest', () => {
    const [span] = practiceSpans({
      register: ['a', 'b', 'c', 'd', 'e', 'f', 'k', 'w']
        .map((id) => here(id, 0, 100))
        .concat(here('late', 1, 100)),
      turns: [
        {
          start: 0,
          end: 40,
          themeId: 't1',
          stations: [
            { attack: ['a', 'b'], defend: ['c'], keep: ['k'] },
            { attack: ['d'], defend: ['e', 'f'], keep: [] },
          ],
        },
      ],
    })
    expect(span).toMatchObject({
      start: 0,
      end: 40,
      themeId: 't1',
      resting: ['w'],
      turnCount: 1,
      continuesWait: false,
    })
    expect(span?.present).not.toContain('late')
    expect(span?.seats.map(({ column, playerIds }) => [column.role, column.situation, playerIds])).toEqual([
      ['attack', 'outnumbering', ['a', 'b']],
      ['defend', 'outnumbered', ['c']],
      ['keep', null, ['k']],
      ['attack', 'outnumbered', ['d']],
      ['defend', 'outnumbering', ['e', 'f']],
    ])
  })
})

describe('the spans of a match', () => {
  const match = {
    periods: [
      { start: 0, end: 100 },
      { start: 120, end: 200 },
    ],
    register: [here('a', 0, 50), here('a', 50, 200), here('b', 0, 70), here('late', 130, 200)],
    spells: [
      { playerId: 'a', line: 'keeper', start: 0, end: 100 },
      { playerId: 'b', line: 'middle', start: 10, end: 30 },
      { playerId: 'b', line: 'middle', start: 30, end: 70 },
    ] as const,
  }

  it('are cut where a spell or a joined line of anyone begins or ends, and nowhere else', () => {
    // 50 is no cut: two lines of one player touch there. 30 is one: a spell ends and another begins.
    expect(matchSpans(match).map(({ periodIndex, start, end }) => [periodIndex, start, end])).toEqual([
      [0, 0, 10],
      [0, 10, 30],
      [0, 30, 70],
      [0, 70, 100],
      [1, 120, 130],
      [1, 130, 200],
    ])
  })

  it('seat who has a spell and let the others who are there rest', () => {
    const looks = matchSpans(match).map((span) => [
      span.seats.map(({ column, playerIds }) => `${column.role} ${playerIds.join(' ')}`).join(', '),
      span.resting.join(' '),
    ])
    expect(looks).toEqual([
      ['keep a', 'b'],
      ['keep a, middle b', ''],
      ['keep a, middle b', ''],
      ['keep a', ''],
      ['', 'a'],
      ['', 'a late'],
    ])
  })
})
