import { describe, expect, it } from 'vitest'
import type { SessionAccount } from '#fairness/account'
import { raiseFlags, type SquadInSeason } from '#fairness/flags/raise-flags'
import { defaultPolicy } from '#squad/policy'
import { type At, aMembership, anAccount, aPlayer, dayNumber } from '../../support/account-builder'

const terms = [
  { id: 'autumn', name: 'Autumn', firstDay: '2026-09-01', lastDay: '2026-12-31' },
  { id: 'spring', name: 'Spring', firstDay: '2027-01-01', lastDay: '2027-06-30' },
]

function flagsOf(accounts: readonly SessionAccount[], squad: Partial<SquadInSeason> = {}) {
  return raiseFlags({
    accounts,
    players: [aPlayer({ id: 'ana' })],
    memberships: [aMembership('ana')],
    terms,
    policy: defaultPolicy,
    medianTurnSeconds: 60,
    on: '2027-06-01',
    ...squad,
  })
}

/** Practices one after the other in which ana attacked for so many seconds where 300 were due. */
const attacking = (...seconds: readonly number[]) =>
  seconds.map((got, index) =>
    practice(index, {
      live: 900,
      rows: [{ role: 'attack', seconds: got, fair: 300, turns: 1, fairTurns: 5 }],
    }),
  )

const practice = (index: number, ana: At, kind: 'practice' | 'match' = 'practice') =>
  anAccount({ id: `s${index}`, day: dayNumber(index), kind, players: { ana } })

describe('when flags may speak', () => {
  it('is not before four written sessions', () => {
    expect(flagsOf(attacking(0, 0, 0))).toEqual([])
    expect(flagsOf(attacking(0, 0, 0, 0))).toMatchObject([
      { rule: 'attackShort', scope: 'practice', gapSeconds: -1200 },
    ])
  })

  it('does not count sessions that were not written', () => {
    const notWritten = anAccount({
      id: 'x',
      day: '2026-09-20',
      written: 'notWritten',
      players: { ana: { live: 0 } },
    })
    expect(flagsOf([...attacking(0, 0, 0), notWritten])).toEqual([])
  })

  it('counts sessions of both kinds, and from joining on', () => {
    const match = practice(9, { rows: [{ role: 'attack', seconds: 300, fair: 300 }] }, 'match')
    expect(flagsOf([...attacking(0, 0, 0), match])).toHaveLength(1)
    const others = [20, 21, 22, 23].map((index) =>
      anAccount({ id: `o${index}`, day: dayNumber(index), players: {} }),
    )
    expect(flagsOf([...attacking(0, 0, 0), ...others])).toEqual([])
  })

  it('is at once where goal-keeping is concerned', () => {
    const kept = [practice(0, { rows: [{ role: 'keep', seconds: 60, fair: 60 }] })]
    expect(
      flagsOf(kept, { players: [aPlayer({ id: 'ana', keeps: false })] }).map((flag) => flag.rule),
    ).toEqual(['goalShareOver', 'keptUnwillingly'])
  })

  it('in matches, for attack and defence, is not before the fourth match', () => {
    const matches = (count: number) =>
      Array.from({ length: count }, (_, index) =>
        practice(
          index,
          {
            live: 3000,
            rows: [
              { role: 'attack', seconds: 0, fair: 900 },
              { role: 'defend', seconds: 3000, fair: 900 },
              { role: 'rest', fair: 1200 },
            ],
          },
          'match',
        ),
      )
    const practices = [10, 11, 12, 13].map((index) => practice(index, { live: 60 }))
    expect(flagsOf([...matches(3), ...practices])).toEqual([])
    expect(flagsOf([...matches(4), ...practices]).map((flag) => [flag.rule, flag.scope])).toEqual([
      ['attackShort', 'match'],
    ])
  })
})

describe('whom flags are about', () => {
  it('is never guests, nor anybody for what it did as a guest', () => {
    const asGuest = attacking(0, 0, 0, 0, 0).map((account) => ({
      ...account,
      presences: account.presences.map((presence) => ({ ...presence, isMember: false })),
    }))
    expect(flagsOf(asGuest, { memberships: [] })).toEqual([])
    expect(flagsOf(asGuest)).toEqual([])
  })

  it('is not those who have left', () => {
    expect(
      flagsOf(attacking(0, 0, 0, 0), { memberships: [aMembership('ana', '2026-08-01', '2026-12-01')] }),
    ).toEqual([])
  })
})

describe('practice and match', () => {
  it('are judged apart: a surplus in matches does not hide what is short in practice', () => {
    const match = practice(8, { rows: [{ role: 'attack', seconds: 3000, fair: 300 }] }, 'match')
    expect(flagsOf([...attacking(0, 0, 0, 0), match])).toMatchObject([
      { rule: 'attackShort', scope: 'practice' },
    ])
  })
})

describe('since', () => {
  it('is the first session after which it has held without a break', () => {
    // Gaps after each: −300, −600, −900, −600 (about even again), −700, −1000.
    const flags = flagsOf(attacking(0, 0, 0, 600, 200, 0))
    expect(flags).toMatchObject([{ rule: 'attackShort', since: '2026-09-05', sinceSessionId: 's4' }])
  })

  it('reaches back before the flag was allowed to speak', () => {
    expect(flagsOf(attacking(0, 0, 0, 0))).toMatchObject([{ since: '2026-09-03' }])
  })

  it('starts anew with a term for the part of it spent in goal', () => {
    const keep = (index: number, seconds: number) =>
      practice(index, { live: 1000, rows: [{ role: 'keep', seconds, fair: seconds }] })
    // Day 0 is in autumn, days 130 and 131 in spring.
    expect(flagsOf([keep(0, 900), keep(130, 100)])).toEqual([])
    expect(flagsOf([keep(0, 900), keep(130, 600), keep(131, 700)])).toMatchObject([
      { rule: 'goalShareOver', since: dayNumber(130), gapSeconds: 300 },
    ])
  })
})

describe('closing', () => {
  it('is a gap smaller than three attended sessions ago', () => {
    // −1800 after six; then +100 each: −1500 is smaller than −1800.
    expect(flagsOf(attacking(0, 0, 0, 0, 0, 0, 400, 400, 400))).toMatchObject([
      { gapSeconds: -1500, isClosing: true },
    ])
    expect(flagsOf(attacking(0, 0, 0, 0, 0, 0, 300, 300, 300))).toMatchObject([{ isClosing: false }])
    expect(flagsOf(attacking(0, 0, 0, 0, 0, 0))).toMatchObject([{ isClosing: false }])
  })

  it('looks back at matches before attack and defence in matches could be flagged', () => {
    const matches = (...seconds: readonly number[]) =>
      seconds.map((got, index) =>
        practice(index, { live: 6000, rows: [{ role: 'attack', seconds: got, fair: 3000 }] }, 'match'),
      )
    const attackIn = (accounts: readonly SessionAccount[]) =>
      flagsOf(accounts).filter(({ rule }) => rule === 'attackShort')
    // −3000 after the first match; then +300 each, and the fourth is the first after which it may speak.
    expect(attackIn(matches(0, 3300, 3300))).toEqual([])
    expect(attackIn(matches(0, 3300, 3300, 3300))).toMatchObject([
      { gapSeconds: -2100, since: dayNumber(0), isClosing: true },
    ])
    expect(attackIn(matches(0, 3000, 3000, 3000))).toMatchObject([{ isClosing: false }])
  })

  it('passes over sessions the player was away from', () => {
    const away = [20, 21, 22].map((index) => practice(index, { live: 0 }))
    expect(flagsOf([...attacking(0, 0, 0, 0, 0, 0, 400, 400, 400), ...away])).toMatchObject([
      { isClosing: true },
    ])
  })
})

describe('rules that say less', () => {
  it('keep silent beside the one that replaces them', () => {
    const rows = [
      {
        role: 'attack' as const,
        situation: 'outnumbering' as const,
        seconds: 0,
        fair: 200,
        turns: 0,
        fairTurns: 3,
      },
    ]
    const accounts = Array.from({ length: 4 }, (_, index) => practice(index, { live: 300, rows }))
    expect(flagsOf(accounts).map((flag) => [flag.rule, flag.subject])).toEqual([
      ['attackShort', ''],
      ['situationNeverMet', 'outnumbering'],
    ])
  })
})

describe('agreed fewer turns', () => {
  it('are nobody’s fault', () => {
    const agreements = [{ playerId: 'ana', dueShare: 0.5, firstDay: '2026-09-01', lastDay: null }]
    expect(flagsOf(attacking(150, 150, 150, 150, 150))).toHaveLength(1)
    expect(flagsOf(attacking(150, 150, 150, 150, 150), { agreements })).toEqual([])
  })
})

describe('passed turns', () => {
  it('raise a note after three practices running, and take nothing off a gap', () => {
    const accounts = attacking(0, 0, 0, 0)
    const passed = [1, 2, 3].map((index) => ({
      sessionId: `s${index}`,
      playerId: 'ana',
      role: 'attack' as const,
      lengthSeconds: 60,
    }))
    expect(flagsOf(accounts, { passed }).map((flag) => [flag.rule, flag.gapSeconds])).toEqual([
      ['attackShort', -1200],
      ['passedRunning', 0],
    ])
  })
})
