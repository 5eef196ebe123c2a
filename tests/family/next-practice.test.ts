import { describe, expect, it } from 'vitest'
import { comingWhen, nextPractice } from '#family/next-practice'

const planned = {
  kind: 'practice' as 'practice' | 'match',
  day: '2026-06-11',
  startsAt: '17:30',
  place: 'Mill Field',
  isCancelled: false,
  written: 'notWritten',
}

describe('the practice that comes next', () => {
  it('is the first from today on that is neither a match, nor called off, nor written', () => {
    const before = { ...planned, day: '2026-06-04' }
    const match = { ...planned, kind: 'match' as const }
    const calledOff = { ...planned, isCancelled: true }
    const written = { ...planned, written: 'tapped' }
    expect(nextPractice([before, match, calledOff, written, planned], '2026-06-08')).toBe(planned)
    expect(nextPractice([before, match, calledOff, written], '2026-06-08')).toBeNull()
    expect(nextPractice([planned], '2026-06-11')).toBe(planned)
  })

  it('has a time and place only where the squad shows them and nobody withholds them', () => {
    const when = { day: '2026-06-11', startsAt: '17:30', place: 'Mill Field' }
    expect(comingWhen(planned, { showsComing: true, isWithheld: false })).toEqual(when)
    expect(comingWhen(planned, { showsComing: true, isWithheld: true })).toBeNull()
    expect(comingWhen(planned, { showsComing: false, isWithheld: false })).toBeNull()
  })
})
