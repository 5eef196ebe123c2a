import { describe, expect, it } from 'vitest'
import { noWishes } from '#match/format/line-wish'
import { linesSaid } from '#ui/player/lines-said'
import { keepsLines, lastDayToOffer, memberText } from '#ui/player/setting-words'

const change = (day: string, keeps: boolean) => ({ playerId: 'ana', day, keeps })

describe('who may be put in goal, in words', () => {
  it('is one line while nothing has changed, or all of it was set right', () => {
    expect(keepsLines({ keeps: true, keepsChanges: [] })).toEqual(['May be put in goal.'])
    expect(keepsLines({ keeps: false, keepsChanges: [] })).toEqual(['Asks not to be put in goal.'])
    const setRight = [change('2026-03-01', false), change('2026-03-01', true)]
    expect(keepsLines({ keeps: true, keepsChanges: setRight })).toEqual(['May be put in goal.'])
  })

  it('says from when on, the newest first, and what was before', () => {
    const keepsChanges = [change('2026-03-01', false), change('2026-05-04', true), change('2026-05-11', true)]
    expect(keepsLines({ keeps: true, keepsChanges })).toEqual([
      'From Mon, 4 May 2026 on: may be put in goal.',
      'From Sun, 1 Mar 2026 on: asks not to be put in goal.',
      'Before Sun, 1 Mar 2026: may be put in goal.',
    ])
  })
})

describe('the days of a member, in words', () => {
  const today = '2026-06-08'

  it('are since, from, or from and to', () => {
    expect(memberText({ firstDay: '2025-09-01', lastDay: null, today })).toBe('since Mon, 1 Sept 2025')
    expect(memberText({ firstDay: '2026-09-01', lastDay: null, today })).toBe('from Tue, 1 Sept 2026')
    expect(memberText({ firstDay: '2025-09-01', lastDay: '2026-01-31', today })).toBe(
      'from Mon, 1 Sept 2025 to Sat, 31 Jan 2026',
    )
  })

  it('are offered to end yesterday, and never before they begin', () => {
    expect(lastDayToOffer({ firstDay: '2025-09-01', today })).toBe('2026-06-07')
    expect(lastDayToOffer({ firstDay: today, today })).toBe(today)
  })
})

describe('lines in matches, in words', () => {
  it('are what was said of each, and nothing where nothing was', () => {
    expect(linesSaid(noWishes)).toBeNull()
    expect(linesSaid({ back: 'notYet', middle: 'likes', forward: 'likes' })).toBe(
      'Lines in matches: likes middle and forward; not yet back.',
    )
  })
})
