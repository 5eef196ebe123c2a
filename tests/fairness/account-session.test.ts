import { describe, expect, it } from 'vitest'
import type { SessionAccount } from '#fairness/account'
import { accountMatch } from '#fairness/account-match'
import { accountPractice } from '#fairness/account-practice'
import type { AccountRules } from '#fairness/account-spans'

const here = (playerId: string, from = 0, to = 3600) => ({ playerId, from, to })
const rules: AccountRules = {
  able: new Set(['ann', 'ben', 'eve']),
  members: new Set(['ann', 'ben', 'cas', 'eve']),
  middleAttackShare: 0.25,
  written: 'tapped',
}
const lineOf = (account: SessionAccount, playerId: string, role: string, line: string | null = null) =>
  account.lines.find((l) => l.playerId === playerId && l.role === role && l.line === line)

describe('the account of a practice', () => {
  // One turn of 60 s, 1 against 1 with a keeper; four there, one of them a guest; eve, a member who may keep, is away.
  const account = accountPractice(
    {
      id: 's1',
      day: '2026-09-01',
      lengthSeconds: 3600,
      register: [here('ann'), here('ben'), here('cas'), here('guest')],
      turns: [
        {
          start: 300,
          end: 360,
          themeId: 't1',
          stations: [{ attack: ['cas'], defend: ['guest'], keep: ['ann'] }],
        },
      ],
    },
    rules,
  )

  it('says what everyone got', () => {
    expect(lineOf(account, 'ann', 'keep')).toMatchObject({
      seconds: 60,
      turns: 1,
      situation: null,
      themeId: 't1',
    })
    expect(lineOf(account, 'cas', 'attack')).toMatchObject({
      seconds: 60,
      turns: 1,
      situation: 'level',
      themeId: 't1',
    })
    expect(lineOf(account, 'ben', 'rest')).toMatchObject({
      seconds: 60,
      turns: 1,
      situation: null,
      themeId: 't1',
    })
  })

  it('says what everyone was due: 1/2 of goal for the two who may keep, 1/3 of each other seat of what is left', () => {
    expect(lineOf(account, 'ann', 'keep')).toMatchObject({ fairSeconds: 30, fairTurns: 0.5 })
    expect(lineOf(account, 'ann', 'attack')?.fairSeconds).toBeCloseTo(10, 9)
    expect(lineOf(account, 'cas', 'attack')?.fairSeconds).toBeCloseTo(20, 9)
    expect(lineOf(account, 'cas', 'attack')?.fairTurns).toBeCloseTo(1 / 3, 9)
    expect(lineOf(account, 'guest', 'keep')?.fairSeconds ?? 0).toBe(0)
  })

  it('says what a member who was away would have been due: 1/3 of goal, 1/4 of a seat and 2/4 of rest of what is left', () => {
    expect(lineOf(account, 'eve', 'keep')).toMatchObject({
      seconds: 0,
      fairSeconds: 0,
      openGoalFairSeconds: 0,
    })
    expect(lineOf(account, 'eve', 'keep')?.fullFairSeconds).toBeCloseTo(20, 9)
    expect(lineOf(account, 'eve', 'attack')?.fullFairSeconds).toBeCloseTo(60 * (2 / 3) * (1 / 4), 9)
    expect(lineOf(account, 'eve', 'rest')?.fullFairSeconds).toBeCloseTo(60 * (2 / 3) * (2 / 4), 9)
    expect(lineOf(account, 'guest', 'defend')?.fullFairSeconds).toBe(0)
  })

  it('says what would be due if everyone had taken a turn in goal: a quarter of every seat', () => {
    for (const playerId of ['ann', 'ben', 'cas', 'guest']) {
      expect(lineOf(account, playerId, 'keep')?.openGoalFairSeconds).toBeCloseTo(15, 9)
      expect(lineOf(account, playerId, 'rest')?.openGoalFairSeconds).toBeCloseTo(15, 9)
    }
  })

  it('says how everyone was there', () => {
    expect(account.liveSeconds).toBe(60)
    expect(account.presences).toContainEqual({
      playerId: 'ben',
      isMember: true,
      attendance: 'here',
      liveSeconds: 60,
      turnsPresent: 1,
      longestRestTurns: 1,
    })
    expect(account.presences).toContainEqual({
      playerId: 'eve',
      isMember: true,
      attendance: 'away',
      liveSeconds: 0,
      turnsPresent: 0,
      longestRestTurns: 0,
    })
    expect(account.presences.find((p) => p.playerId === 'guest')?.isMember).toBe(false)
  })

  it('refuses a book that does not balance', () => {
    const turns = [
      { start: 0, end: 60, themeId: null, stations: [{ attack: ['ann'], defend: ['ann'], keep: [] }] },
    ]
    const practice = { id: 's2', day: '2026-09-01', lengthSeconds: null, register: [here('ann')], turns }
    expect(() => accountPractice(practice, rules)).toThrow('does not balance')
  })
})

describe('the account of a match', () => {
  const match = {
    id: 'm1',
    day: '2026-09-05',
    periods: [{ start: 0, end: 400 }],
    register: [here('ann', 0, 400), here('ben', 0, 400), here('cas', 0, 400), here('guest', 100, 400)],
    spells: [
      { playerId: 'ann', line: 'keeper', start: 0, end: 400 },
      { playerId: 'ben', line: 'back', start: 0, end: 400 },
      { playerId: 'cas', line: 'middle', start: 0, end: 200 },
      { playerId: 'guest', line: 'forward', start: 200, end: 400 },
    ] as const,
  }
  const account = accountMatch(match, rules)

  it('books lines under roles, the middle a quarter as attack and the rest as defence, by line', () => {
    expect(lineOf(account, 'ann', 'keep')?.seconds).toBe(400)
    expect(lineOf(account, 'ben', 'defend', 'back')?.seconds).toBe(400)
    expect(lineOf(account, 'cas', 'attack', 'middle')?.seconds).toBe(50)
    expect(lineOf(account, 'cas', 'defend', 'middle')?.seconds).toBe(150)
    expect(lineOf(account, 'guest', 'attack', 'forward')?.seconds).toBe(200)
    expect(lineOf(account, 'cas', 'rest')?.seconds).toBe(200)
    expect(lineOf(account, 'guest', 'rest')?.seconds).toBe(100)
    expect(account.lines.every((line) => line.turns === 0 && line.situation === null)).toBe(true)
  })

  it('has late comers by the register and by what was missed', () => {
    expect(account.presences.find((p) => p.playerId === 'guest')).toMatchObject({
      attendance: 'late',
      liveSeconds: 300,
      turnsPresent: 0,
    })
  })

  it('has attendance and nothing else when nobody wrote it down', () => {
    const bare = accountMatch({ ...match, spells: [] }, { ...rules, written: 'notWritten' })
    expect(bare).toMatchObject({ liveSeconds: 0, lines: [], written: 'notWritten' })
    expect(bare.presences).toHaveLength(5)
  })

  it('knows who was there without playing from the whole register', () => {
    const register = [
      { ...here('cas', 0, 400), state: 'here' as const },
      { ...here('eve', 0, 400), state: 'notPlaying' as const },
    ]
    const { presences } = accountMatch(match, rules, register)
    expect(presences.find((p) => p.playerId === 'eve')).toMatchObject({
      attendance: 'notPlaying',
      liveSeconds: 0,
    })
  })
})
