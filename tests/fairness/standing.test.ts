import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { playedFigure, standingsAfterEach, standingsNow, timeInTerm } from '#fairness/standing'
import { accountsOf, anAccount, someSeasons } from '../support/account-builder'

const ids = ['ana', 'bo', 'cy', 'di', 'ed', 'flo']

describe('standings', () => {
  it('sums a player’s figures, practice and match apart', () => {
    const attack = { role: 'attack', situation: 'outnumbering', themeId: 't1' } as const
    const accounts = [
      anAccount({
        id: 'p1',
        day: '2026-09-01',
        players: {
          ana: {
            rows: [
              { ...attack, seconds: 60, turns: 2, fair: 45, fairTurns: 1.5 },
              { role: 'rest', themeId: 't1', seconds: 30, turns: 1, fair: 45 },
            ],
          },
        },
      }),
      anAccount({
        id: 'm1',
        day: '2026-09-02',
        kind: 'match',
        players: { ana: { rows: [{ role: 'attack', seconds: 600, fair: 500 }] } },
      }),
      anAccount({
        id: 'p2',
        day: '2026-09-03',
        players: { ana: { rows: [{ ...attack, seconds: 40, turns: 1, fair: 50 }] } },
      }),
    ]
    const ana = standingsNow({ accounts }).get('ana')
    expect(ana?.practice.roles.attack).toMatchObject({
      seconds: 100,
      turns: 3,
      fairSeconds: 95,
      fairTurns: 1.5,
    })
    expect(ana?.practice.situations.outnumbering.seconds).toBe(100)
    expect(ana?.practice.themes.get('t1')).toMatchObject({ seconds: 100, turns: 3, turnsPresent: 4 })
    expect(ana?.practice).toMatchObject({ liveSeconds: 130, sessionsWritten: 2 })
    expect(ana?.match.roles.attack.seconds).toBe(600)
    expect(ana?.practice.attended.map((session) => session.sessionId)).toEqual(['p1', 'p2'])
  })

  it('takes sessions by day, and none that was not written', () => {
    const on = (day: string, seconds: number, written: 'tapped' | 'notWritten' = 'tapped') =>
      anAccount({ id: day, day, written, players: { ana: { rows: [{ role: 'attack', seconds }] } } })
    const accounts = [on('2026-09-08', 2), on('2026-09-01', 1), on('2026-09-04', 100, 'notWritten')]
    const running = [...standingsAfterEach({ accounts })].map(({ account, standings }) => [
      account.day,
      standings.get('ana')?.practice.roles.attack.seconds,
    ])
    expect(running).toEqual([
      ['2026-09-01', 1],
      ['2026-09-08', 3],
    ])
  })

  it('keeps what a guest did out of what it did as a member', () => {
    const accounts = [
      anAccount({
        id: 'p1',
        day: '2026-09-01',
        players: { ana: { isGuest: true, rows: [{ role: 'attack', seconds: 60 }] } },
      }),
      anAccount({
        id: 'p2',
        day: '2026-09-02',
        players: { ana: { rows: [{ role: 'attack', seconds: 5 }] } },
      }),
    ]
    expect(standingsNow({ accounts }).get('ana')?.practice.roles.attack.seconds).toBe(5)
    expect(standingsNow({ accounts, as: 'guest' }).get('ana')?.practice.roles.attack.seconds).toBe(60)
  })

  it('sums the time in goal of a term', () => {
    const on = (day: string, seconds: number) =>
      anAccount({ id: day, day, players: { ana: { live: 100, rows: [{ role: 'keep', seconds }] } } })
    const accounts = [on('2026-12-18', 100), on('2027-01-04', 30), on('2027-02-01', 20)]
    const ana = standingsNow({ accounts }).get('ana')
    expect(ana && timeInTerm(ana.practice, { firstDay: '2027-01-01', lastDay: '2027-03-31' })).toEqual({
      liveSeconds: 200,
      keepSeconds: 50,
    })
  })

  it('after the last of the sessions so far equals the standings of those sessions alone', () => {
    fc.assert(
      fc.property(someSeasons({ players: 6 }), fc.nat(7), (season, cut) => {
        const accounts = accountsOf(season, ids)
        const steps = [...standingsAfterEach({ accounts })]
        const upTo = Math.min(cut, steps.length - 1)
        expect(steps[upTo]?.standings).toEqual(standingsNow({ accounts: accounts.slice(0, upTo + 1) }))
      }),
      { numRuns: 40 },
    )
  })
})

describe('fewer turns agreed', () => {
  const agreements = [{ playerId: 'ana', dueShare: 0.5, firstDay: '2026-09-02', lastDay: '2026-09-02' }]
  const accounts = ['2026-09-01', '2026-09-02', '2026-09-03'].map((day) =>
    anAccount({
      id: day,
      day,
      players: {
        ana: {
          rows: [
            { role: 'attack', situation: 'level', themeId: 't1', seconds: 20, fair: 40, fairTurns: 2 },
            { role: 'rest', seconds: 40, fair: 20 },
          ],
        },
        bo: { rows: [{ role: 'attack', seconds: 60, fair: 40 }] },
      },
    }),
  )
  const standings = standingsNow({ accounts, agreements })
  const ana = standings.get('ana')?.practice

  it('lowers what is due of playing on its days, and leaves the even share as it was', () => {
    // Even share 3 × 40; due 40 + 20 + 40.
    expect(ana?.roles.attack).toMatchObject({ fairSeconds: 120, dueSeconds: 100, dueTurns: 5 })
    expect(ana?.situations.level.dueSeconds).toBe(100)
    expect(ana?.themes.get('t1')?.dueSeconds).toBe(100)
  })

  it('makes what is given up waiting that is due, so that the dues still add up to the time', () => {
    expect(ana?.roles.rest).toMatchObject({ fairSeconds: 60, dueSeconds: 80 })
    expect(ana && playedFigure(ana).dueSeconds + ana.roles.rest.dueSeconds).toBe(180)
  })

  it('changes nothing for the others', () => {
    expect(standings.get('bo')?.practice.roles.attack).toMatchObject({ fairSeconds: 120, dueSeconds: 120 })
  })
})
