import { describe, expect, it } from 'vitest'
import { readTimes } from '#ui/line-up/change-times-part'
import { printedPeriods } from '#ui/line-up/printed-periods'

const players = [
  { id: 'a', name: 'Ana' },
  { id: 'b', name: 'Bo' },
  { id: 'c', name: 'Cy' },
  { id: 'd', name: 'Di' },
]

describe('a line-up on paper', () => {
  it('says who begins each period and what changes when, by the clock of the period', () => {
    const spells = [
      { playerId: 'a', line: 'keeper', start: 0, end: 600 },
      { playerId: 'b', line: 'back', start: 0, end: 300 },
      { playerId: 'b', line: 'middle', start: 300, end: 600 },
      { playerId: 'c', line: 'forward', start: 0, end: 300 },
      { playerId: 'd', line: 'back', start: 300, end: 600 },
      { playerId: 'd', line: 'keeper', start: 600, end: 1200 },
      { playerId: 'c', line: 'back', start: 600, end: 1050 },
      { playerId: 'a', line: 'back', start: 1050, end: 1200 },
    ] as const
    const [first, second] = printedPeriods({ periodSeconds: [600, 600], spells, players })
    expect(first).toMatchObject({
      begins: { keeper: ['Ana'], back: ['Bo'], middle: [], forward: ['Cy'] },
      changes: [{ clock: '5:00', off: ['Cy'], on: ['Di (back)'], moves: ['Bo to middle'] }],
    })
    expect(second).toMatchObject({
      start: 600,
      begins: { keeper: ['Di'], back: ['Cy'], middle: [], forward: [] },
      changes: [{ clock: '7:30', off: ['Cy'], on: ['Ana (back)'], moves: [] }],
      edges: [600, 1050],
    })
  })
})

describe('times for changes as they are typed', () => {
  it('are minutes, or minutes and seconds, apart by commas', () => {
    expect(readTimes('5, 12:30,20', 1500)).toEqual({ ok: true, seconds: [300, 750, 1200] })
    expect(readTimes('', 1500)).toEqual({ ok: true, seconds: [] })
  })

  it.each(['0', '25', '30', 'half', '5:75', '-3'])(
    '%s is no time inside 25 minutes, and what is right is said',
    (text) => {
      const read = readTimes(`5, ${text}`, 1500)
      expect(read).toEqual({
        ok: false,
        message: `“${text}” is no time inside a period of 25 minutes: write minutes above 0 and below 25.`,
      })
    },
  )
})
