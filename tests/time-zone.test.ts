import { describe, expect, it } from 'vitest'

// Minutes east of Greenwich on 1 January and 1 July, from the IANA time zone database (no clock change is planned).
const offsets: Record<string, readonly [january: number, july: number]> = {
  UTC: [0, 0],
  'Pacific/Auckland': [13 * 60, 12 * 60],
}

describe('the run of the tests', () => {
  it('really is in the time zone it claims', () => {
    const east = (month: number) => -new Date(2026, month, 1).getTimezoneOffset() + 0
    expect([east(0), east(6)]).toEqual(offsets[process.env.TZ ?? 'unset'])
  })
})
