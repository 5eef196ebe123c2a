import { describe, expect, it } from 'vitest'
import { writeBook } from '#exchange/write-book'
import { writeMatches } from '#exchange/write-matches'
import { writeTurns } from '#exchange/write-turns'

describe('the season book as CSV', () => {
  it('has a row for each column of a player, its gap as a number that can be summed', () => {
    const line = {
      name: '=Ann',
      player: 'a1',
      isMember: true,
      kind: 'practice' as const,
      role: 'attack' as const,
      situation: 'outnumbering' as const,
      line: null,
      theme: 'Passing, wide',
      seconds: 90,
      turns: 2,
      fairSeconds: 100.12345,
    }
    const [, row] = writeBook([line]).split('\r\n')
    expect(row).toBe('\'=Ann,a1,yes,practice,attack,outnumbering,,"Passing, wide",90,2,100.123,-10.123')
  })
})

describe('matches as CSV', () => {
  it('have a row for each player who was there, and never a formula', () => {
    const line = {
      name: 'Ann',
      player: 'a1',
      isMember: false,
      day: '2026-09-05',
      match: 'm1',
      title: '+Reeds',
      thereSeconds: 1200,
      playedSeconds: 900,
      dueSeconds: 975.00049,
      isStart: true,
      lines: { keeper: 600, back: 0, middle: 0, forward: 300 },
      longestOffSeconds: 300,
      leastSeconds: 600,
    }
    const [header, row] = writeMatches([line]).split('\r\n')
    expect(row).toBe("Ann,a1,guest,2026-09-05,m1,'+Reeds,1200,900,975,yes,600,0,0,300,300,600")
    expect(header?.split(',')).toHaveLength(16)
  })
})

describe('turns and spells as CSV', () => {
  it('have a row for each place, for each spell, and for a turn without places', () => {
    const turn = {
      start: 0,
      end: 45,
      themeId: 't',
      stations: [{ attack: ['a'], defend: [], keep: ['b'] }],
      round: 'One',
    }
    const text = writeTurns({
      sessions: [
        {
          kind: 'practice',
          key: 's1',
          day: '2026-09-01',
          title: '',
          turns: [turn, { ...turn, start: 45, end: 90, stations: [] }],
        },
        {
          kind: 'match',
          key: 'm1',
          day: '2026-09-05',
          title: '',
          spells: [{ playerId: 'a', line: 'back', start: 0, end: 600 }],
        },
      ],
      nameOf: (id) => id.toUpperCase(),
      keyOf: (id) => id,
      themeOf: () => 'Passing',
    })
    expect(text.split('\r\n').slice(1)).toEqual([
      '2026-09-01,practice,,s1,1,0,45,One,Passing,1,attack,A,a',
      '2026-09-01,practice,,s1,1,0,45,One,Passing,1,keep,B,b',
      '2026-09-01,practice,,s1,2,45,90,One,Passing,,,,',
      '2026-09-05,match,,m1,,0,600,,,,back,A,a',
      '',
    ])
  })
})
