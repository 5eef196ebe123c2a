import { describe, expect, it } from 'vitest'
import { isToForget } from '#pitch/kept-on-phone'

const now = Date.UTC(2026, 9, 31, 12)
const hours = (count: number) => now - count * 3600 * 1000
const kept = (kind: 'coach' | 'helper', fetchedAt: number, waiting = 0) => ({
  viewerKind: kind,
  fetchedAt,
  waiting,
})

describe('a practice on a phone', () => {
  it.each<[what: string, gone: boolean, practice: ReturnType<typeof kept>]>([
    ['of a coach, fetched today', false, kept('coach', hours(1))],
    ['of a coach, fetched 13 days ago', false, kept('coach', hours(13 * 24))],
    ['of a coach, fetched 15 days ago', true, kept('coach', hours(15 * 24))],
    ['of a coach, with taps to send', false, kept('coach', hours(90 * 24), 1)],
    ['of a helper, that evening', false, kept('helper', hours(4))],
    ['of a helper, the day after', true, kept('helper', hours(25))],
    ['of a helper, with taps that nobody takes any more', true, kept('helper', hours(25), 3)],
  ])('%s: is it forgotten? %s', (_what, gone, practice) => {
    expect(isToForget(practice, now)).toBe(gone)
  })
})
