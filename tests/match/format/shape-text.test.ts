import { describe, expect, it } from 'vitest'
import { placesInAll } from '#match/format/places-in-all'
import { shapeOfText, textOfShape } from '#match/format/shape-text'

describe('a shape as coaches write it', () => {
  it.each([
    ['2-3-1', { keeper: 1, back: 2, middle: 3, forward: 1 }],
    [' 2 - 3 – 1 ', { keeper: 1, back: 2, middle: 3, forward: 1 }],
    ['2-2', { keeper: 1, back: 2, middle: 0, forward: 2 }],
    ['3', { keeper: 1, back: 0, middle: 3, forward: 0 }],
    ['4-2-3-1', { keeper: 1, back: 4, middle: 5, forward: 1 }],
    ['4-1-2-1-2', { keeper: 1, back: 4, middle: 4, forward: 2 }],
  ])('%s', (text, places) => {
    expect(shapeOfText(text, { hasKeeper: true })?.places).toEqual(places)
    expect(shapeOfText(text, { hasKeeper: false })?.places).toEqual({ ...places, keeper: 0 })
  })

  it.each(['', 'diamond', '2-', '-2-3', '2--3', '2-3-1-1-1-1', '123', '2 3 1'])('%j is none', (text) => {
    expect(shapeOfText(text, { hasKeeper: true })).toBeNull()
  })

  it('is written as its name where that says the places, else by its places', () => {
    const places = { keeper: 1, back: 4, middle: 5, forward: 1 }
    expect(textOfShape({ name: '4-2-3-1', places })).toBe('4-2-3-1')
    expect(textOfShape({ name: 'The tree', places })).toBe('4-5-1')
    expect(textOfShape({ name: '4-4-2', places })).toBe('4-5-1')
    expect(placesInAll(places)).toBe(11)
  })
})
