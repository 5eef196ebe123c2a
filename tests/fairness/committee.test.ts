import { describe, expect, it } from 'vitest'
import { committeeRow, guardCount, guardPart } from '#fairness/committee'
import type { Evenness } from '#fairness/evenness'

describe('groups under five', () => {
  it.each([
    [0, { hidden: false, count: 0 }],
    [1, { hidden: true }],
    [4, { hidden: true }],
    [5, { hidden: false, count: 5 }],
  ])('%s is %o', (count, guarded) => {
    expect(guardCount(count)).toEqual(guarded)
  })

  it('are hidden on both sides of a cut, for one could be had from the other', () => {
    expect(guardPart({ count: 11, of: 14 })).toEqual({ hidden: true, isMoreThanHalf: true })
    expect(guardPart({ count: 3, of: 14 })).toEqual({ hidden: true, isMoreThanHalf: false })
    expect(guardPart({ count: 9, of: 14 })).toEqual({ hidden: false, count: 9, of: 14 })
    expect(guardPart({ count: 14, of: 14 })).toEqual({ hidden: false, count: 14, of: 14 })
    expect(guardPart({ count: 4, of: 4 })).toEqual({ hidden: true, isMoreThanHalf: null })
  })
})

describe('a squad’s row for the committee', () => {
  const indices = { jain: 0.97, gini: 0.08 }
  const evenness = (members: number): Evenness => ({
    kind: 'practice',
    written: { held: 14, written: 12, asPlanned: 3, isEnough: true },
    said: {
      members,
      withinBand: members - 6,
      widest: {
        playerId: 'secret-player',
        column: 'attack',
        part: 'whileHere',
        seconds: -1320,
        answered: 'answered',
      },
      indices: { attack: indices, defend: indices, played: indices },
      lorenz: [],
    },
  })

  it('has no player and no figure of a single one', () => {
    const row = committeeRow(evenness(14), { open: 2, answered: 6 })
    expect(JSON.stringify(row)).not.toMatch(/secret-player|1320/)
    expect(row.said).toEqual({
      members: { hidden: false, count: 14 },
      withinBand: { hidden: false, count: 8, of: 14 },
      flagsOpen: { hidden: true },
      flagsAnswered: { hidden: false, count: 6 },
      jainPlayed: 0.97,
      giniPlayed: 0.08,
    })
  })

  it('has no index of a squad under five', () => {
    const small = evenness(4)
    const said = small.said && { ...small.said, withinBand: 4 }
    expect(committeeRow({ ...small, said }, { open: 0, answered: 0 }).said).toMatchObject({
      members: { hidden: true },
      jainPlayed: null,
      giniPlayed: null,
    })
  })

  it('says nothing of what is not written down', () => {
    expect(committeeRow({ ...evenness(14), said: null }, { open: 9, answered: 0 }).said).toBeNull()
  })
})
