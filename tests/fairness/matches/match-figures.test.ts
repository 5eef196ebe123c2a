import { describe, expect, it } from 'vitest'
import { accountMatch } from '#fairness/account-match'
import { belowPromise, belowReason } from '#fairness/matches/below-promise'
import { longDays } from '#fairness/matches/long-days'
import { longestOffOf } from '#fairness/matches/longest-off'
import { type MatchFigure, matchFigures } from '#fairness/matches/match-figure'
import { matchRows } from '#fairness/matches/match-rows'
import { promisedSeconds } from '#fairness/matches/promised-seconds'
import { shareRange } from '#fairness/matches/share-range'
import type { Match, Spell } from '#match/match'
import { defaultPolicy } from '#squad/policy'

// Worked by hand, no source. Three on (goal, back, forward), two halves of ten minutes with a break of two. Dot comes
// after five minutes; Eve is away.
const periods = [
  { start: 0, end: 600 },
  { start: 720, end: 1320 },
]
const spell = (playerId: string, line: Spell['line'], start: number, end: number) => ({
  playerId,
  line,
  start,
  end,
})
const match: Match = {
  id: 'm1',
  day: '2026-09-05',
  periods,
  register: [
    { playerId: 'ann', from: 0, to: 1320 },
    { playerId: 'ben', from: 0, to: 1320 },
    { playerId: 'cy', from: 0, to: 1320 },
    { playerId: 'dot', from: 300, to: 1320 },
  ],
  spells: [
    spell('ann', 'keeper', 0, 600),
    spell('ann', 'forward', 1020, 1320),
    spell('ben', 'back', 0, 300),
    spell('ben', 'keeper', 720, 1320),
    spell('cy', 'forward', 0, 600),
    spell('cy', 'back', 720, 1020),
    spell('dot', 'back', 300, 600),
    spell('dot', 'forward', 720, 1020),
    spell('dot', 'back', 1020, 1320),
  ],
}
const account = accountMatch(match, {
  able: new Set(['ann', 'ben', 'cy', 'dot']),
  members: new Set(['ann', 'ben', 'cy', 'dot', 'eve']),
  middleAttackShare: 0.5,
  written: 'typedLater',
})
const promise = { leastTime: null, policyShare: 0.5 }
const agreements = [{ playerId: 'cy', dueShare: 0.5, firstDay: '2026-09-01', lastDay: null }]
const figures = (of: Partial<Parameters<typeof matchFigures>[0]> = {}) =>
  matchFigures({ account, match, promise, agreements: [], ...of })
const of = (playerId: string, in_ = figures()) =>
  in_.figures.find((figure) => figure.playerId === playerId) as MatchFigure

describe('what a match was for a player', () => {
  it('has minutes, lines, the start and the longest time off', () => {
    expect(figures().wholeSeconds).toBe(1200)
    expect(of('ann')).toMatchObject({
      attendance: 'here',
      thereSeconds: 1200,
      playedSeconds: 900,
      lines: { keeper: 600, back: 0, middle: 0, forward: 300 },
      isStart: true,
      longestOffSeconds: 300,
      leastSeconds: 600,
    })
    expect(of('dot')).toMatchObject({
      attendance: 'late',
      thereSeconds: 900,
      playedSeconds: 900,
      lines: { keeper: 0, back: 600, middle: 0, forward: 300 },
      isStart: false,
      longestOffSeconds: 0,
      leastSeconds: 450,
    })
  })

  it('has the even share: all of five minutes for the three who were there, three quarters of fifteen for four', () => {
    expect(of('ann').dueSeconds).toBeCloseTo(300 + 675, 6)
    expect(of('dot').dueSeconds).toBeCloseTo(675, 6)
    expect(of('cy', figures({ agreements })).dueSeconds).toBeCloseTo((300 + 675) / 2, 6)
  })

  it('shares the first places among who was there at the first kick-off', () => {
    expect(['ann', 'ben', 'cy', 'dot'].map((id) => of(id).dueStarts)).toEqual([1, 1, 1, 0])
    const dotToo = { ...match, register: match.register.map((line) => ({ ...line, from: 0 })) }
    expect(of('dot', figures({ match: dotToo })).dueStarts).toBe(0.75)
  })

  it('leaves out who was away', () => {
    expect(figures().figures.map(({ playerId }) => playerId)).toEqual(['ann', 'ben', 'cy', 'dot'])
  })

  it('comes to the same minutes as the account, and to all places for all of the time', () => {
    const all = figures().figures
    for (const { playerId, playedSeconds, thereSeconds } of all) {
      const off = account.lines
        .filter((line) => line.playerId === playerId && line.role === 'rest')
        .reduce((sum, line) => sum + line.seconds, 0)
      expect(playedSeconds).toBe(thereSeconds - off)
    }
    expect(all.reduce((sum, own) => sum + own.playedSeconds, 0)).toBe(3 * 1200)
    expect(all.reduce((sum, own) => sum + own.dueSeconds, 0)).toBeCloseTo(3 * 1200, 6)
  })
})

describe('the longest time off', () => {
  const off = (start: number, end: number) => ({ start, end, resting: ['ann'] })
  const on = (start: number, end: number) => ({ start, end, resting: [] })

  it('runs over a break, which counts nothing, and ends where it came on or went away', () => {
    expect(longestOffOf([on(0, 300), off(300, 600), off(720, 900), on(900, 1320)], 'ann')).toBe(480)
    expect(longestOffOf([off(0, 300), on(300, 400), off(400, 600)], 'ann')).toBe(300)
    expect(longestOffOf([], 'ann')).toBe(0)
  })
})

describe('what was promised', () => {
  const halves = { share: null, periods: 1, late: [{ arrivesIn: 1, periods: 1 }], wherePossible: false }
  const promised = (presence: { from: number; to: number }[]) =>
    promisedSeconds({ leastTime: halves, policyShare: 0.25 }, { periods, presence })

  it('is of the format: a period for who was there throughout or came during the first, else the club’s share', () => {
    expect(promised([{ from: 0, to: 1320 }])).toBe(600)
    expect(promised([{ from: 300, to: 1320 }])).toBe(600)
    expect(promised([{ from: 900, to: 1320 }])).toBe(105)
    expect(promised([{ from: 0, to: 600 }])).toBe(150)
    expect(promised([])).toBe(0)
  })

  it('counts no break, and of who went away in between only the time there', () => {
    expect(
      promised([
        { from: 0, to: 300 },
        { from: 1020, to: 1320 },
      ]),
    ).toBe(150)
  })

  it('is cut down to what all can have only where the format says so', () => {
    const both = { share: null, periods: 2, late: [], wherePossible: true }
    const least = (wherePossible: boolean) =>
      figures({ promise: { leastTime: { ...both, wherePossible }, policyShare: 0 } }).figures.map(
        ({ leastSeconds }) => leastSeconds,
      )
    // Three places of twenty minutes are an hour; both halves for the three who were there throughout fit into it.
    expect(least(true)).toEqual([1200, 1200, 1200, 0])
    expect(least(false)).toEqual([1200, 1200, 1200, 0])
    const withAll = { ...match, register: match.register.map((line) => ({ ...line, from: 0 })) }
    const forAll = (wherePossible: boolean) =>
      figures({ match: withAll, promise: { leastTime: { ...both, wherePossible }, policyShare: 0 } })
    expect(of('ann', forAll(false)).leastSeconds).toBe(1200)
    expect(of('ann', forAll(true)).leastSeconds).toBe(600)
  })

  it('names everyone who had less, with what the book knows of why', () => {
    const strict = figures({ promise: { leastTime: null, policyShare: 0.8 }, agreements })
    expect(belowPromise([strict]).map(({ figure, reason }) => [figure.playerId, reason])).toEqual([
      ['ann', null],
      ['ben', null],
      ['cy', 'agreed'],
    ])
    expect(belowPromise([figures()])).toEqual([])
  })

  it('does not call who was hurt there throughout', () => {
    const here = { attendance: 'here', isAgreed: false, wholeSeconds: 1200 } as const
    expect(belowReason({ ...here, thereSeconds: 422 })).toBe('notPlaying')
    expect(belowReason({ ...here, thereSeconds: 1200 })).toBeNull()
  })
})

describe('the season of matches', () => {
  const players = ['ben', 'ann', 'cy', 'dot', 'eve'].map((id) => ({
    id,
    name: id,
    keeps: true,
    wantsToKeep: false,
  }))
  const second = { ...account, sessionId: 'm2', day: '2026-09-12' }
  const matches = [figures(), { ...figures({ account: second }), sessionId: 'm2' }]
  const { members, guests } = matchRows({
    matches,
    standing: { accounts: [account, second] },
    players,
    policy: defaultPolicy,
  })

  it('adds the matches up, by name, and keeps those who were away', () => {
    expect(guests).toEqual([])
    expect(members.map(({ player }) => player.name)).toEqual(['ann', 'ben', 'cy', 'dot', 'eve'])
    expect(members[0]).toMatchObject({
      matchesThere: 2,
      matchesWritten: 2,
      thereSeconds: 2400,
      lines: { keeper: 1200, back: 0, middle: 0, forward: 600 },
      starts: 2,
      dueStarts: 2,
      offSeconds: 600,
      longestOffSeconds: 300,
    })
    expect(members[0]?.played.seconds).toBeCloseTo(1800, 6)
    expect(members[0]?.played.dueSeconds).toBeCloseTo(1950, 6)
    expect(members[4]).toMatchObject({ matchesThere: 0, matchesWritten: 2, thereSeconds: 0, starts: 0 })
  })

  it('says between which parts of their time all had', () => {
    const all = members.map(({ player, thereSeconds, played }) => ({
      playerId: player.id,
      thereSeconds,
      playedSeconds: played.seconds,
    }))
    expect(shareRange(all)).toEqual({
      least: { playerId: 'ann', share: 0.75 },
      most: { playerId: 'dot', share: 1 },
    })
    expect(shareRange([])).toBeNull()
  })

  it('watches the limit of a day, to the second', () => {
    const day = { playerId: 'ann', day: '2026-09-05', matches: 3, playedSeconds: 3601 }
    expect(longDays([day], 3600)).toEqual([day])
    expect(longDays([day], 3601)).toEqual([])
    expect(longDays([day], null)).toEqual([])
  })
})
