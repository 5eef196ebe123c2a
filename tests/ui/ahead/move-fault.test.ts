import { describe, expect, it } from 'vitest'
import type { Day } from '#common/time'
import { moveFault } from '#ui/ahead/move-fault'

const day = (text: string) => text as Day
const term = {
  name: 'Spring term',
  firstDay: day('2026-04-01'),
  lastDay: day('2026-07-10'),
  asOf: day('2026-06-05'),
  closed: [{ name: 'Fair on the field', firstDay: day('2026-06-22'), lastDay: day('2026-06-23') }],
}

describe('a practice moved to another day', () => {
  it.each([
    ['', /^Choose the day/],
    ['2026-06-18', /is on .*18 Jun.* already/],
    ['2026-07-11', /is not in Spring term\. Choose a day from/],
    ['2026-06-04', /is past/],
    ['2026-06-22', /There is no practice on .*22 Jun.*: Fair on the field/],
    ['2026-06-23', /Fair on the field/],
  ])('cannot go to "%s"', (to, said) => {
    expect(moveFault({ from: day('2026-06-18'), to, term })).toMatch(said)
  })

  it.each(['2026-06-05', '2026-06-21', '2026-06-24', '2026-07-10'])('can go to %s', (to) => {
    expect(moveFault({ from: day('2026-06-18'), to, term })).toBeNull()
  })
})
