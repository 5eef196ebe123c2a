import { describe, expect, it } from 'vitest'
import { keptUntil, retentionOf } from '#rights/retention'

const seasons = [
  { firstDay: '2024-09-01', lastDay: '2025-06-30' },
  { firstDay: '2025-09-01', lastDay: '2026-06-30' },
]
const rule = { seasons, months: 12, today: '2026-06-08' }
const days = (firstDay: string, lastDay: string | null, playerId = 'p') => ({ playerId, firstDay, lastDay })

// Common practice, no source: how long a club keeps names is its own decision under local law.
describe('how long a child is kept by name', () => {
  it('counts from the end of the season in which it left', () => {
    expect(keptUntil([days('2024-09-01', '2024-11-03')], rule)).toBe('2026-06-30')
    expect(keptUntil([days('2024-09-01', '2025-06-30')], { ...rule, months: 1 })).toBe('2025-07-30')
  })

  it('counts from the last squad of several', () => {
    expect(keptUntil([days('2024-09-01', '2024-11-03'), days('2025-09-01', '2025-10-01')], rule)).toBe(
      '2027-06-30',
    )
  })

  it('counts from the day itself where no season holds it', () => {
    expect(keptUntil([days('2024-09-01', '2025-08-05')], rule)).toBe('2026-08-05')
  })

  it.each([
    ['is still in a squad', [days('2024-09-01', null)]],
    ['leaves a squad today', [days('2024-09-01', '2026-06-08')]],
    ['is in one squad and was in another', [days('2024-09-01', '2024-11-03'), days('2025-09-01', null)]],
    ['never was in a squad', []],
  ])('says nothing of one who %s', (_what, own) => {
    expect(keptUntil(own, rule)).toBeNull()
  })
})

describe('whose time is over', () => {
  it('tells those of today and of the next sixty days, the earliest first', () => {
    const all = [
      days('2024-09-01', '2025-05-01', 'soon'),
      days('2023-01-01', '2023-05-31', 'over'),
      days('2021-01-01', '2022-05-31', 'longOver'),
      days('2025-09-01', '2025-12-31', 'later'),
      days('2025-09-01', null, 'here'),
    ]
    expect(retentionOf(all, rule)).toEqual({
      over: [
        { playerId: 'longOver', keptUntil: '2023-05-31' },
        { playerId: 'over', keptUntil: '2024-05-31' },
      ],
      soon: [{ playerId: 'soon', keptUntil: '2026-06-30' }],
    })
  })

  it('is over from the day after the last one, and warned of for sixty', () => {
    const one = [days('2025-01-01', '2025-08-05')]
    const on = (today: string) => retentionOf(one, { ...rule, today })
    expect([on('2026-08-05').soon.length, on('2026-08-06').over.length]).toEqual([1, 1])
    expect([on('2026-06-06').soon.length, on('2026-06-05').soon.length]).toEqual([1, 0])
  })
})
