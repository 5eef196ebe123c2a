import { describe, expect, it } from 'vitest'
import { asPlannedShare, changeOf, type EvennessInput, evennessOf } from '#fairness/evenness'
import { defaultPolicy } from '#squad/policy'
import { type At, anAccount, aPlayer } from '../support/account-builder'

const ids = ['ana', 'bo', 'cy']

const attackOf = (seconds: number, more: { full?: number } = {}): At => ({
  live: 3000,
  rows: [
    { role: 'attack', seconds, fair: 1500, ...more },
    { role: 'rest', seconds: 3000 - seconds, fair: 1500 },
  ],
})

function evenness(players: Readonly<Record<string, At>>, more: Partial<EvennessInput> = {}) {
  return evennessOf(
    {
      accounts: [anAccount({ id: 's1', day: '2026-09-01', players })],
      players: ids.map((id) => aPlayer({ id })),
      policy: defaultPolicy,
      ...more,
    },
    'practice',
  )
}

describe('how even a squad was', () => {
  it('counts who is inside the band in everything that is judged', () => {
    const { said } = evenness({ ana: attackOf(800), bo: attackOf(1500), cy: attackOf(2200) })
    // Ana is 700 s short of attack, Cy 700 s over (and so short of waiting).
    expect(said).toMatchObject({ members: 3, withinBand: 1 })
  })

  it('names the widest gap, of what and which part, and whether it was answered', () => {
    const players = { ana: attackOf(700), bo: attackOf(1600), cy: attackOf(1700) }
    const flag = { playerId: 'ana', rule: 'attackShort', scope: 'practice' } as const
    expect(evenness(players).said?.widest).toEqual({
      playerId: 'ana',
      column: 'attack',
      part: 'whileHere',
      seconds: -800,
      answered: 'notFlagged',
    })
    const answeredBy = (status: 'open' | 'acknowledged' | 'cleared') =>
      evenness(players, { flags: [{ ...flag, status }] }).said?.widest?.answered
    expect(answeredBy('acknowledged')).toBe('answered')
    expect(answeredBy('open')).toBe('open')
    expect(answeredBy('cleared')).toBe('notFlagged')
    const ofAnother = evenness(players, { flags: [{ ...flag, playerId: 'bo', status: 'acknowledged' }] })
    expect(ofAnother.said?.widest?.answered).toBe('notFlagged')
  })

  it('names what someone lacks before what someone else has too much of', () => {
    const { said } = evenness({ ana: attackOf(800), bo: attackOf(1500), cy: attackOf(2900) })
    expect(said?.widest).toMatchObject({ playerId: 'ana', seconds: -700 })
  })

  it('names what was missed when all are inside the band', () => {
    const { said } = evenness({ ana: attackOf(1500, { full: 2000 }), bo: attackOf(1500), cy: attackOf(1500) })
    expect(said).toMatchObject({ withinBand: 3, widest: { playerId: 'ana', part: 'missed', seconds: -500 } })
  })

  it('holds nothing against anyone that was agreed: fewer turns are no gap', () => {
    const agreements = [{ playerId: 'ana', dueShare: 0.5, firstDay: '2026-08-01', lastDay: null }]
    const players = { ana: attackOf(750), bo: attackOf(1900), cy: attackOf(1850) }
    // Due is 750 of attack to Ana after the agreement, just what was had; Bo is 400 over.
    expect(evenness(players, { agreements }).said).toMatchObject({
      withinBand: 3,
      widest: { playerId: 'bo', column: 'attack', part: 'whileHere', seconds: 400 },
    })
  })

  it('does not hold it against anyone to be short of goal without wanting to keep', () => {
    const keep = (seconds: number): At => ({ live: 3000, rows: [{ role: 'keep', seconds, fair: 1000 }] })
    const players = { ana: keep(0), bo: keep(1500), cy: keep(1500) }
    expect(evenness(players).said?.withinBand).toBe(3)
    const anaWants = [aPlayer({ id: 'ana', wantsToKeep: true }), aPlayer({ id: 'bo' }), aPlayer({ id: 'cy' })]
    expect(evenness(players, { players: anaWants }).said?.withinBand).toBe(2)
  })

  it('leaves guests and those who were never there out', () => {
    const { said } = evenness({ ana: attackOf(1500), bo: { ...attackOf(0), isGuest: true }, cy: { live: 0 } })
    expect(said?.members).toBe(1)
  })

  it('gives indices of share ÷ what was due', () => {
    // Shares of 1/3, 2/3 and 5/3 against 1500 each: Jain (8/3)² ÷ (3 × 30/9) = 64/90 (R. Jain's example 1, 2, 5, printed 0.71).
    const { said } = evenness({ ana: attackOf(500), bo: attackOf(1000), cy: attackOf(2500) })
    expect(said?.indices.attack.jain).toBeCloseTo(64 / 90, 12)
    expect(said?.indices.defend).toEqual({ jain: null, gini: null })
  })

  it('calls a squad even that keeps to the fewer turns it agreed, in indices and curve', () => {
    const agreements = [{ playerId: 'ana', dueShare: 0.5, firstDay: '2026-08-01', lastDay: null }]
    const { said } = evenness({ ana: attackOf(750), bo: attackOf(1500), cy: attackOf(1500) }, { agreements })
    for (const of of ['attack', 'played'] as const) {
      expect(said?.indices[of].jain).toBeCloseTo(1, 12)
      expect(said?.indices[of].gini).toBeCloseTo(0, 12)
    }
    for (const point of said?.lorenz ?? []) expect(point.share).toBeCloseTo(point.players, 12)
  })
})

describe('honest books', () => {
  const session = (id: string, written: 'tapped' | 'asPlanned' | 'notWritten') =>
    anAccount({ id, day: '2026-09-01', written, players: { ana: attackOf(1500) } })

  it('say nothing under the policy’s part of sessions written', () => {
    const accounts = [session('a', 'tapped'), session('b', 'notWritten')]
    expect(evenness({}, { accounts })).toMatchObject({
      said: null,
      written: { held: 2, written: 1, isEnough: false },
    })
    expect(evenness({}, { accounts: [] }).said).toBeNull()
  })

  it('say from the policy’s part on, and how much is as planned', () => {
    const accounts = [
      session('a', 'tapped'),
      session('b', 'asPlanned'),
      session('c', 'asPlanned'),
      session('d', 'notWritten'),
      session('e', 'notWritten'),
    ]
    const { said, written } = evenness({}, { accounts })
    expect(said?.members).toBe(1)
    expect(asPlannedShare(written)).toBeCloseTo(2 / 3, 12)
    expect(asPlannedShare({ written: 0, asPlanned: 0 })).toBe(0)
  })
})

describe('change since last term', () => {
  it('is the change of the part inside the band and of the index', () => {
    const before = evenness({ ana: attackOf(800), bo: attackOf(1500), cy: attackOf(2200) })
    const now = evenness({ ana: attackOf(1500), bo: attackOf(1500), cy: attackOf(1500) })
    expect(changeOf(before, now)?.withinBandShare).toBeCloseTo(2 / 3, 12)
    expect(changeOf(before, now)?.jainPlayed).toBeGreaterThan(0)
    expect(changeOf(null, now)).toBeNull()
    expect(changeOf(evenness({}, { accounts: [] }), now)).toBeNull()
  })
})

describe('matches', () => {
  it('are judged by minutes played and goal, not by attack', () => {
    const back: At = {
      live: 3000,
      rows: [
        { role: 'attack', seconds: 0, fair: 1500 },
        { role: 'defend', seconds: 3000, fair: 1500 },
      ],
    }
    const accounts = [anAccount({ id: 'm', day: '2026-09-01', kind: 'match', players: { ana: back } })]
    const input = { accounts, players: [aPlayer({ id: 'ana' })], policy: defaultPolicy }
    expect(evennessOf(input, 'match').said?.withinBand).toBe(1)
    expect(evennessOf(input, 'practice').said).toBeNull()
  })
})
