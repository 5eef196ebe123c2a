import { describe, expect, it } from 'vitest'
import { guessNameOrder, nameProblem } from '#exchange/table/name-cells'
import { nameKey, nearNameKey, tidyName, turnAroundName } from '#exchange/table/name-form'

describe('a name', () => {
  it.each([
    ['  Ann   Ash ', 'Ann Ash'],
    ['Ann\u00a0Ash', 'Ann Ash'],
    ['Ann\r\nAsh', 'Ann Ash'],
    ['Zoe\u0308', 'Zoë'],
    ['\u202eAnn\u202c', 'Ann'],
    ['👩🏽‍🦰 Zoë', '👩🏽‍🦰 Zoë'],
    ['محمد', 'محمد'],
  ])('%j is kept as %j', (text, kept) => {
    expect(tidyName(text)).toBe(kept)
  })

  it.each([
    ['Ash, Ann', 'Ann Ash'],
    ["O'Brien-Łukasz , Zoë", "Zoë O'Brien-Łukasz"],
    ['King, Martin, Jr.', 'King, Martin, Jr.'],
    ['Ann Ash', 'Ann Ash'],
    ['Ash,', 'Ash,'],
  ])('%j turned around is %j', (text, turned) => {
    expect(turnAroundName(text)).toBe(turned)
  })

  it.each([
    [['Ash, Ann', 'Birch, Bo'], 'lastFirst'],
    [['Ash, Ann', 'Bo Birch', 'Cy Cole'], 'asWritten'],
    [['Ash, Ann', 'Birch, Bo', 'Cy Cole', ''], 'lastFirst'],
    [[], 'asWritten'],
  ])('%j are names %s', (names, order) => {
    expect(guessNameOrder(names)).toBe(order)
  })

  it.each([
    ['is the same whatever the case, apostrophe and hyphen', 'O’BRIEN‐łukasz', "o'brien-Łukasz", true, true],
    ['looks alike without its accents', 'Lukasz Zak', 'Łukasz Żak', false, true],
    ['looks alike without its marks', 'OBrien Smith', "O'Brien-Smith", false, true],
    ['is another with another letter', 'Ann', 'Anna', false, false],
  ])('%s', (_sentence, one, other, isSame, isAlike) => {
    expect(nameKey(one) === nameKey(other)).toBe(isSame)
    expect(nearNameKey(one) === nearNameKey(other)).toBe(isAlike)
  })

  it.each([
    ['Ann', true],
    ['李', true],
    ['😀', true],
    ['-', false],
    ['a'.repeat(80), true],
    ['a'.repeat(81), false],
    ['👍'.repeat(80), true],
  ])('%j can be kept: %s', (name, isFine) => {
    expect(nameProblem(name) === null).toBe(isFine)
  })
})
