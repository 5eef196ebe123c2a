import { describe, expect, it } from 'vitest'
import { holdsOn, standsAlready } from '#rights/consent'
import { consentKinds, consentName, consentWordingLimit } from '#rights/consent-kind'

const consent = { givenOn: '2026-03-01', withdrawnOn: '2026-05-01' }

describe('a consent', () => {
  it('holds from the day it was given until the day it is withdrawn', () => {
    const on = (day: string) => holdsOn(consent, day)
    expect([on('2026-02-28'), on('2026-03-01'), on('2026-04-30'), on('2026-05-01')]).toEqual([
      false,
      true,
      true,
      false,
    ])
    expect(holdsOn({ ...consent, withdrawnOn: null }, '2030-01-01')).toBe(true)
  })

  it('is written down once at a time for each guardian', () => {
    const one = { ...consent, id: 'c', playerId: 'p', kind: 'messages', wording: 'w', givenById: 'g' }
    const ask = (change: object) =>
      standsAlready([one], { kind: 'messages', givenById: 'g', givenOn: '2026-04-01', ...change })
    expect(ask({})).toBe(true)
    expect(ask({ givenById: 'h' })).toBe(false)
    expect(ask({ kind: 'handOver' })).toBe(false)
    expect(ask({ givenOn: '2026-05-01' })).toBe(false)
  })

  it('has words of its own for each kind, short enough to be kept', () => {
    expect(new Set(consentKinds.map(({ kind }) => kind)).size).toBe(consentKinds.length)
    for (const { kind, wording } of consentKinds) {
      expect(consentName(kind)).not.toBe(kind)
      expect(wording.length).toBeLessThan(consentWordingLimit)
    }
    expect(consentName('oldKind')).toBe('oldKind')
  })
})
