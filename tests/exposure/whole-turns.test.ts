import { describe, expect, it } from 'vitest'
import { exposuresOf } from '#exposure/exposures'
import { practiceSpans } from '#exposure/practice-spans'
import { longestRestRun } from '#exposure/rest-run'
import { wholeTurns } from '#exposure/whole-turns'
import { accountPractice } from '#fairness/account-practice'
import { medianTurnSeconds } from '#fairness/median-turn'
import type { Turn } from '#practice/turn'

const everyone = ['a', 'b', 'c', 'd', 'w']
const register = everyone.map((playerId) => ({ playerId, from: 0, to: 1000 }))

/** One turn a text: `start-end attackers/defenders`, with `+` before it where it goes on with the turn before. */
const turnOf = (text: string): Turn => {
  const [, more, start, end, attack = '', defend = ''] = /^(\+?)(\d+)-(\d+) (\w*)\/(\w*)$/.exec(text) ?? []
  return {
    start: Number(start),
    end: Number(end),
    themeId: null,
    stations: [{ attack: [...attack], defend: [...defend], keep: [] }],
    continuesTurn: more === '+',
  }
}
const spansOf = (...texts: string[]) => practiceSpans({ register, turns: texts.map(turnOf) })
const turnsOf = (...texts: string[]) =>
  exposuresOf(spansOf(...texts), { middleAttackShare: 0.5 })
    .filter(({ sums }) => sums.turns > 0)
    .map(({ playerId, column, sums }) => `${playerId} ${column.role} ${sums.turns}`)
    .sort()

describe('parts of one turn', () => {
  it('are one turn for who plays both, one for who comes on, and no wait for who played any of it', () => {
    expect(turnsOf('0-20 a/b', '+20-60 c/b')).toEqual([
      'a attack 1',
      'b defend 1',
      'c attack 1',
      'd rest 1',
      'w rest 1',
    ])
  })

  it('are one turn in each role for who changes its role', () => {
    expect(turnsOf('0-20 a/b', '+20-60 b/a').filter((text) => /^[ab]/.test(text))).toEqual([
      'a attack 1',
      'a defend 1',
      'b attack 1',
      'b defend 1',
    ])
  })

  it('are one turn of attacking where the situation changes during it', () => {
    expect(turnsOf('0-20 ab/c', '+20-60 a/c').filter((text) => /^[abc]/.test(text))).toEqual([
      'a attack 1',
      'b attack 1',
      'c defend 1',
    ])
  })

  it('keep every second where it was played', () => {
    const seconds = exposuresOf(spansOf('0-20 ab/c', '+20-60 a/c'), { middleAttackShare: 0.5 })
    const of = (playerId: string, role: string) =>
      seconds
        .filter((row) => row.playerId === playerId && row.column.role === role)
        .reduce((sum, row) => sum + row.sums.seconds, 0)
    expect([of('a', 'attack'), of('b', 'attack'), of('b', 'rest'), of('w', 'rest')]).toEqual([60, 20, 40, 60])
  })

  it('are two turns where the second does not begin as the first ends', () => {
    expect(wholeTurns(spansOf('0-20 a/b', '+21-60 c/b')).map((parts) => parts.length)).toEqual([1, 1])
    expect(wholeTurns(spansOf('+0-20 a/b', '+20-40 a/b', '40-60 a/b')).map((parts) => parts.length)).toEqual([
      2, 1,
    ])
  })

  it.each([
    [['0-20 a/b', '+20-60 a/b'], 1],
    [['0-20 a/b', '+20-60 w/b'], 0],
    [['0-20 w/b', '+20-60 a/b', '70-90 a/b'], 1],
    [['0-20 a/b', '+20-60 a/c', '70-90 a/b', '+90-95 c/b'], 2],
  ])('%j are so many waits in a row: %i', (texts, longest) => {
    expect(longestRestRun(spansOf(...texts), 'w', { freeGameIsOneWait: false })).toBe(longest)
  })

  it('are one turn for the middle length of turns', () => {
    expect(medianTurnSeconds(['0-20 a/b', '+20-60 a/c', '70-100 a/b'].map(turnOf))).toBe(45)
  })
})

describe('what is due of a turn in parts', () => {
  const accountOf = (...texts: string[]) =>
    accountPractice(
      { id: 'p', day: '2026-03-01', lengthSeconds: null, register, turns: texts.map(turnOf) },
      { able: new Set(), members: new Set(everyone), middleAttackShare: 0.5, written: 'tapped' },
    )
  const sums = (account: ReturnType<typeof accountOf>, figure: 'turns' | 'fairTurns') => {
    const byColumn = new Map<string, number>()
    for (const line of account.lines) {
      const key = `${line.role} ${line.situation}`
      byColumn.set(key, (byColumn.get(key) ?? 0) + line[figure])
    }
    return byColumn
  }

  it('adds up to the turns that were had, in every column', () => {
    const account = accountOf('0-20 ab/c', '+20-60 ad/c', '60-90 a/b', '+90-95 c/b', '+95-96 c/')
    const had = sums(account, 'turns')
    for (const [column, due] of sums(account, 'fairTurns')) expect(due).toBeCloseTo(had.get(column) ?? 0, 9)
  })

  it('cut without any change it is what it was, and so is everything else', () => {
    const whole = accountOf('0-60 ab/c', '70-100 w/d')
    const cut = accountOf('0-20 ab/c', '+20-60 ab/c', '70-100 w/d')
    expect(cut.presences).toEqual(whole.presences)
    expect(cut.lines).toHaveLength(whole.lines.length)
    for (const [index, line] of whole.lines.entries()) {
      const { fairTurns, fairSeconds, ...exact } = line
      expect(cut.lines[index]).toMatchObject({
        playerId: exact.playerId,
        role: exact.role,
        seconds: exact.seconds,
        turns: exact.turns,
      })
      expect(cut.lines[index]?.fairTurns).toBeCloseTo(fairTurns, 9)
      expect(cut.lines[index]?.fairSeconds).toBeCloseTo(fairSeconds, 9)
    }
  })

  it('counts the turn once among those it was there for', () => {
    const account = accountOf('0-20 ab/c', '+20-60 ad/c')
    expect(account.presences.map(({ turnsPresent }) => turnsPresent)).toEqual([1, 1, 1, 1, 1])
  })
})
