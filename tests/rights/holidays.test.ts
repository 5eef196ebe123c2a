import { describe, expect, it } from 'vitest'
import { readHolidays } from '#rights/holidays'

describe('a list of public holidays', () => {
  it('is read from lines, commas or spaces, in order, each once', () => {
    expect(readHolidays('2026-12-25\n2026-05-01, 2026-12-26 2026-05-01')).toEqual({
      ok: true,
      days: ['2026-05-01', '2026-12-25', '2026-12-26'],
    })
    expect(readHolidays('  ')).toEqual({ ok: true, days: [] })
  })

  it.each(['25 December', '2026-02-30', '0026-12-25', '2026-12-25; select'])(
    'is refused where it says %s',
    (text) => {
      expect(readHolidays(text)).toMatchObject({ ok: false, wrong: expect.any(String) })
    },
  )
})
