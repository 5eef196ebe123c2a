import { describe, expect, it } from 'vitest'
import { ableOn, hasKeepsChanged, keepsOn, nextChangeAfter } from '#squad/keeps-change'

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

describe('whether it changed within some days', () => {
  const autumn = { from: '2025-09-01', to: '2025-12-31' }

  it('is yes for a day after the first of them, and no for the first, for others and for what was set right', () => {
    const changed = (...changes: ReturnType<typeof change>[]) => hasKeepsChanged(ana, { changes, ...autumn })
    expect(changed(change('2025-10-01', false))).toBe(true)
    expect(changed(change('2025-12-31', false))).toBe(true)
    expect(changed(change('2025-09-01', false))).toBe(false)
    expect(changed(change('2026-01-01', false))).toBe(false)
    expect(changed(change('2025-10-01', false, 'bo'))).toBe(false)
    expect(changed(change('2025-10-01', false), change('2025-10-01', true))).toBe(false)
    expect(changed(change('2025-08-01', false), change('2025-11-01', true))).toBe(true)
  })
})
