import { describe, expect, it } from 'vitest'
import { presentByRegister, presentInTurns } from '#planning/expected'
import { designForDay, withDesign } from '#planning/new-request'
import { type SeasonColumn, seasonDue, seasonOf, themeShort } from '#planning/season-gaps'
import { suggestDesigns } from '#planning/suggest-designs'
import { plainSheet } from '#practice/design-sheet'
import { aFreeGame, aPlanRequest, aPlanRound } from '../support/plan-builder'

const column = (change: Partial<SeasonColumn>): SeasonColumn => ({
  playerId: 'p1',
  kind: 'practice',
  isMember: true,
  role: 'attack',
  situation: null,
  themeId: null,
  seconds: 0,
  dueSeconds: 0,
  ...change,
})

describe('what is carried in from the season', () => {
  const columns = [
    column({ seconds: 100, dueSeconds: 160, situation: 'outnumbering', themeId: 't1' }),
    column({ seconds: 50, dueSeconds: 20, situation: 'level', themeId: 't2' }),
    column({ role: 'rest', seconds: 90, dueSeconds: 60, themeId: 't1' }),
    column({ kind: 'match', seconds: 500, dueSeconds: 900 }),
    column({ isMember: false, seconds: 7000, dueSeconds: 0 }),
    column({ playerId: 'p2', seconds: 10, dueSeconds: 5, themeId: 't1' }),
  ]

  it('is practices alone, matches only when they are asked for, and never what was played as a guest', () => {
    const practice = seasonOf(columns, { withMatches: false }).get('p1')
    expect(practice?.gap).toMatchObject({ attack: -30, rest: 30, outnumbering: -60, level: 30, keep: 0 })
    expect(practice?.roles.attack).toEqual({ seconds: 150, dueSeconds: 180 })
    expect(seasonOf(columns, { withMatches: true }).get('p1')?.gap.attack).toBe(-430)
  })

  it('is the same in whatever order the book was added up', () => {
    // These three add up to two different numbers, by which comes first.
    const parts = [0.1, 0.2, 0.3].map((dueSeconds) => column({ dueSeconds }))
    const sums = [parts, [...parts].reverse()].map((own) => seasonOf(own, { withMatches: false }))
    expect(0.1 + 0.2 + 0.3).not.toBe(0.3 + 0.2 + 0.1)
    expect(sums[0]?.get('p1')?.gap).toEqual(sums[1]?.get('p1')?.gap)
    expect(sums[0]?.get('p1')?.gap.attack).toBe(-0.6)
    const dues = [parts, [...parts].reverse()].map((own) => seasonDue(own))
    expect(dues[0]).toEqual(dues[1])
  })

  it('rests on what was due, by role and by situation, in the squad’s own practices', () => {
    expect(seasonDue(columns).get('p1')).toEqual({
      ...{ attack: 180, defend: 0, keep: 0, rest: 60 },
      ...{ outnumbering: 160, level: 20, outnumbered: 0 },
    })
    expect(seasonDue(columns).get('p2')?.attack).toBe(5)
  })

  it('themes are short by playing, not by waiting, and nobody is short of less than nothing', () => {
    const short = themeShort(columns)
    expect(short.get('t1')).toEqual(new Map([['p1', 60]]))
    expect(short.get('t2')).toEqual(new Map())
  })

  it('designs of the theme that most is owed of come first, those too large for who is expected last', () => {
    const design = (id: string, themeId: string | null, attack: number) => ({
      id,
      name: id,
      themeId,
      rounds: [aPlanRound({ stations: [{ attack, defend: 1, keep: 0 }] })],
    })
    const ranked = suggestDesigns([design('a', null, 2), design('b', 't1', 2), design('c', 't1', 20)], {
      short: themeShort(columns),
      expected: ['p1', 'p2', 'p3'],
    })
    expect(
      ranked.map(({ design: { id }, shortPlayers, isTooLarge }) => [id, shortPlayers, isTooLarge]),
    ).toEqual([
      ['b', 1, false],
      ['a', 0, false],
      ['c', 1, true],
    ])
  })
})

describe('who is expected', () => {
  const rounds = [aPlanRound({ turnCount: 3 }), aFreeGame]

  it('for the turns that the register covers whole, playing', () => {
    // Turns: 0-40, 60-100, 120-160, 180-480, 480-780.
    const line = (from: number, to: number, state: 'here' | 'notPlaying' = 'here') => ({
      playerId: 'p1',
      from,
      to,
      state,
    })
    const present = (register: Parameters<typeof presentByRegister>[0]) =>
      presentByRegister(register, { playerId: 'p1', rounds })
    expect(present([line(0, 3600)])).toEqual([[1, 5]])
    expect(present([line(50, 160), line(170, 3600)])).toEqual([[2, 5]])
    expect(present([line(0, 99), line(110, 3600)])).toEqual([
      [1, 1],
      [3, 5],
    ])
    expect(present([line(0, 100), line(100, 3600, 'notPlaying')])).toEqual([[1, 2]])
    expect(present([])).toEqual([])
  })

  it('to the end stays to the end of another design, and who is there for none of it is not expected', () => {
    expect(presentInTurns([[2, 5]], { before: 5, after: 8 })).toEqual([[2, 8]])
    expect(presentInTurns([[1, 3]], { before: 5, after: 8 })).toEqual([[1, 3]])
    expect(presentInTurns([[4, 5]], { before: 5, after: 3 })).toEqual([])
    const request = aPlanRequest({
      rounds,
      own: { 1: { present: [[4, 5]], mostTurns: 5 }, 2: { mostTurns: 5 } },
    })
    const other = withDesign(request, { ...request.design, rounds: [aPlanRound({ turnCount: 3 })] })
    expect(other.players.map(({ playerId }) => playerId)).not.toContain('p1')
    expect(other.players[0]).toMatchObject({ playerId: 'p2', mostTurns: 3, present: [[1, 3]] })
  })

  it('a design changed for the day says which of its changes are made', () => {
    const longer = {
      id: 'x',
      kind: 'task' as const,
      title: 'Twice as many turns',
      makes: 'harder' as const,
      forWhom: 'all' as const,
      why: '',
      changes: [{ what: 'turns' as const, round: 0, secondsTimes: 1, countTimes: 2 }],
    }
    const sheet = {
      ...plainSheet,
      id: 'd',
      name: 'D',
      themeId: null,
      rounds,
      areaLengthM: 30,
      areaWidthM: 20,
      adaptations: [longer],
    }
    expect(designForDay(sheet).rounds[0]?.turnCount).toBe(3)
    expect(designForDay(sheet, ['x'])).toMatchObject({
      changes: ['Twice as many turns'],
      rounds: [{ turnCount: 6 }, {}],
    })
  })
})
