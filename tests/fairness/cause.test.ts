import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { roles, situations } from '#exposure/column'
import { causeOf, mainPart, openGoalDue } from '#fairness/cause'
import { standingsNow } from '#fairness/standing'
import { accountsOf, aFigure, anAccount, aStanding, someSeasons } from '../support/account-builder'

const ids = ['ana', 'bo', 'cy', 'di', 'ed', 'flo']

describe('why a player is behind', () => {
  it('is missed, goal duty and while here, which add up', () => {
    const figure = aFigure({ seconds: 300, fairSeconds: 420, fullFairSeconds: 600, membersMeanSeconds: 660 })
    // Missed 420 − 600, goal duty 600 − 660, while here 300 − 420; together 300 − 660.
    expect(causeOf(figure)).toEqual({ missed: -180, goalDuty: -60, whileHere: -120, differenceSeconds: -360 })
    expect(mainPart(causeOf(figure))).toBe('missed')
  })

  it('names the part on the side of the difference, and none when there is no difference', () => {
    expect(mainPart({ missed: -300, goalDuty: 0, whileHere: 400, differenceSeconds: 100 })).toBe('whileHere')
    expect(mainPart({ missed: 0, goalDuty: 0, whileHere: 0, differenceSeconds: 0 })).toBeNull()
  })

  it('adds up for every player, role, situation and theme of any season', () => {
    fc.assert(
      fc.property(someSeasons({ players: 6, hasGuest: true }), (season) => {
        const accounts = accountsOf(season, ids)
        const members = ids.slice(0, -1)
        const standings = standingsNow({ accounts })
        expect([...standings.keys()].sort()).toEqual(members)
        for (const id of members) {
          const standing = standings.get(id)?.practice
          if (!standing) throw new Error('a member without a standing')
          const figures = [
            ...roles.map((role) => ({ figure: standing.roles[role], is: (l: Line) => l.role === role })),
            ...situations.map((s) => ({
              figure: standing.situations[s],
              is: (l: Line) => l.situation === s,
            })),
            ...[...standing.themes].map(([themeId, figure]) => ({
              figure,
              is: (l: Line) => l.themeId === themeId && l.role !== 'rest',
            })),
          ]
          for (const { figure, is } of figures) {
            const cause = causeOf(figure)
            expect(cause.missed + cause.goalDuty + cause.whileHere).toBeCloseTo(cause.differenceSeconds, 6)
            // The mean again, straight from the rows: everyone but the guest belongs to every session.
            const full = accounts
              .flatMap((account) => account.lines)
              .filter((line) => line.playerId !== 'flo' && is(line))
              .reduce((sum, line) => sum + line.fullFairSeconds, 0)
            const share = accounts
              .flatMap((account) => account.lines)
              .filter((line) => line.playerId === id && is(line))
              .reduce((sum, line) => sum + line.seconds, 0)
            expect(cause.differenceSeconds).toBeCloseTo(share - full / members.length, 6)
          }
        }
      }),
      { numRuns: 60 },
    )
  })

  it('sums to zero over the members as far as goal duty goes', () => {
    fc.assert(
      fc.property(someSeasons({ players: 6, hasGuest: true }), (season) => {
        const standings = [...standingsNow({ accounts: accountsOf(season, ids) }).values()]
        for (const role of roles) {
          const sum = standings.reduce((total, one) => total + causeOf(one.practice.roles[role]).goalDuty, 0)
          expect(sum).toBeCloseTo(0, 6)
        }
      }),
      { numRuns: 40 },
    )
  })

  it('has missed nothing who was there all the time', () => {
    fc.assert(
      fc.property(someSeasons({ players: 6 }), (season) => {
        const always = {
          ...season,
          practices: season.practices.map((turns) =>
            turns.map((turn) => ({ ...turn, absent: turn.absent & ~1 })),
          ),
        }
        const ana = standingsNow({ accounts: accountsOf(always, ids) }).get('ana')?.practice
        for (const role of roles) expect(ana && causeOf(ana.roles[role]).missed).toBeCloseTo(0, 9)
      }),
      { numRuns: 40 },
    )
  })

  it('takes the mean over those who were members at the session', () => {
    const session = (id: string, day: string, players: Parameters<typeof anAccount>[0]['players']) =>
      anAccount({ id, day, players })
    const attack = (full: number) => ({ rows: [{ role: 'attack' as const, seconds: full, fair: full }] })
    const accounts = [
      session('s1', '2026-09-01', { ana: attack(30), bo: attack(60) }),
      session('s2', '2027-01-10', { ana: attack(10), bo: attack(20), joiner: attack(60) }),
    ]
    const standings = standingsNow({ accounts })
    expect(standings.get('ana')?.practice.roles.attack.membersMeanSeconds).toBe(45 + 30)
    expect(standings.get('joiner')?.practice.roles.attack.membersMeanSeconds).toBe(30)
  })
})

type Line = { role: string; situation: string | null; themeId: string | null }

describe('passed turns', () => {
  it('are a labelled part of the gap and stay in it', () => {
    const accounts = [
      anAccount({
        id: 's1',
        day: '2026-09-01',
        players: { ana: { rows: [{ role: 'attack', seconds: 100, fair: 200 }] } },
      }),
    ]
    const passed = [{ sessionId: 's1', playerId: 'ana', role: 'attack' as const, lengthSeconds: 45 }]
    const ana = standingsNow({ accounts, passed }).get('ana')?.practice
    expect(ana?.passed).toMatchObject({ attack: { turns: 1, seconds: 45 }, defend: { turns: 0, seconds: 0 } })
    expect(ana && causeOf(ana.roles.attack).whileHere).toBe(-100)
  })
})

describe('what would be due if everyone took a turn in goal', () => {
  const keep = (seconds: number) =>
    aStanding({
      liveSeconds: 900,
      roles: {
        keep: aFigure({ seconds, openGoalFairSeconds: 75 }),
        attack: aFigure({ openGoalFairSeconds: 400 }),
      },
    })

  it('is told of who was in goal for more than a third of its time', () => {
    expect(openGoalDue(keep(301))).toEqual({ attack: 400, defend: 0, keep: 75, rest: 0 })
    expect(openGoalDue(keep(300))).toBeNull()
  })
})
