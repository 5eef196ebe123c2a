import { describe, expect, it } from 'vitest'
import { ableOn, keepsOn, nextChangeAfter } from '#squad/keeps-change'

const ana = { id: 'ana', keeps: true }
const change = (day: string, keeps: boolean, playerId = 'ana') => ({ playerId, day, keeps })

describe('whether a player might be put in goal on a day', () => {
  it('is as the player stands when nothing was ever changed', () => {
    expect(keepsOn(ana, { changes: [], day: '2020-01-01' })).toBe(true)
    expect(keepsOn({ ...ana, keeps: false }, { changes: [], day: '2030-01-01' })).toBe(false)
  })

  it('is otherwise from the day of a change on, and before it as it was', () => {
    const changes = [change('2026-03-01', false)]
    const now = { ...ana, keeps: false }
    expect(keepsOn(now, { changes, day: '2025-10-01' })).toBe(true)
    expect(keepsOn(now, { changes, day: '2026-02-28' })).toBe(true)
    expect(keepsOn(now, { changes, day: '2026-03-01' })).toBe(false)
    expect(keepsOn(now, { changes, day: '2026-06-01' })).toBe(false)
  })

  it('goes by the days of several changes, in whatever order they stand', () => {
    const changes = [change('2026-05-01', true), change('2026-03-01', false)]
    const on = (day: string) => keepsOn(ana, { changes, day })
    expect(['2026-01-01', '2026-03-01', '2026-04-30', '2026-05-01'].map(on)).toEqual([
      true,
      false,
      false,
      true,
    ])
  })

  it('takes the later written of two on one day, and still knows what was before', () => {
    const changes = [change('2026-03-01', false), change('2026-03-01', true)]
    expect(keepsOn(ana, { changes, day: '2026-02-01' })).toBe(true)
    expect(keepsOn(ana, { changes, day: '2026-03-01' })).toBe(true)
  })

  it('is nobody else’s change', () => {
    const changes = [change('2026-03-01', false, 'bo')]
    const players = [ana, { id: 'bo', keeps: false }]
    expect(ableOn(players, { changes, day: '2026-02-01' })).toEqual(new Set(['ana', 'bo']))
    expect(ableOn(players, { changes, day: '2026-04-01' })).toEqual(new Set(['ana']))
  })
})

describe('the next change after a day', () => {
  it('is that player’s, later than the day', () => {
    const changes = [
      change('2026-05-01', true),
      change('2026-03-01', false),
      change('2026-04-01', true, 'bo'),
    ]
    const next = (day: string) => nextChangeAfter(changes, { playerId: 'ana', day })
    expect(next('2026-01-01')).toBe('2026-03-01')
    expect(next('2026-03-01')).toBe('2026-05-01')
    expect(next('2026-05-01')).toBeNull()
  })
})
