import { describe, expect, it } from 'vitest'
import { nextMark, parseMark, passMark, placeOf, swapSides } from '#practice/grid-mark'

describe('marks of the grid', () => {
  it.each([
    ['a', 'A'],
    [' A 2 ', 'A2'],
    ['d12', 'D12'],
    ['Keeper', 'K'],
    ['waiting', 'W'],
    ['pd', 'pD'],
    ['passed', 'pA'],
    ['–', ''],
    ['', ''],
  ])('%j is understood as %j', (text, mark) => {
    expect(parseMark(text)).toBe(mark)
  })

  it.each(['x', 'A0', 'A123', 'W1', 'constructor', '__proto__', 'AA'])('%j is no mark', (text) => {
    expect(parseMark(text)).toBeNull()
  })

  it('a tap goes from empty through attack, defend, keep and waiting back to empty', () => {
    const taps = ['', 'A', 'D', 'K', 'W', ''] as const
    for (const [index, mark] of taps.slice(0, -1).entries()) expect(nextMark(mark)).toBe(taps[index + 1])
  })

  it('offered and passed takes the role that stood there, attack when none did, and is taken back by a second tap', () => {
    expect(passMark('D2')).toBe('pD')
    expect(passMark('W')).toBe('pA')
    expect(passMark('pD')).toBe('')
  })

  it('swapping sides keeps areas, keepers and waiting, and copies no pass', () => {
    expect(['A2', 'D', 'K1', 'W', '', 'pA'].map((mark) => swapSides(parseMark(mark) ?? ''))).toEqual([
      'D2',
      'A',
      'K1',
      'W',
      '',
      '',
    ])
  })

  it('a place says its area only when it is written', () => {
    expect(placeOf('A')).toEqual({ role: 'attack', area: null })
    expect(placeOf('D12')).toEqual({ role: 'defend', area: 12 })
    expect(placeOf('W')).toBeNull()
    expect(placeOf('pA')).toBeNull()
  })
})
