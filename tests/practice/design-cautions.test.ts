import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readPublishedGuidance } from '#exchange/published-guidance-json'
import { designCautions, headingCautions, numberCautions, spaceCautions } from '#practice/design-cautions'
import { aRound, aSheet } from '../support/design-builder'

const guidance = readPublishedGuidance(JSON.parse(readFileSync('seeds/published/guidance.json', 'utf8')))
const at = (age: number) => ({ age, guidance })

describe('heading', () => {
  it('is no matter where the design has none', () => {
    expect(headingCautions({ hasHeading: false }, at(8))).toEqual([])
  })

  // Guidance of the English, Scottish and Northern Irish associations (2020, reprinted): under 11 and younger none;
  // under 12 one practice a month of five headers; under 13 one a week of five; under 14 to 16 one a week of ten.
  // U.S. Soccer 2016: under 11 and younger none, under 12 and 13 no more than 15 to 20 headers in a week.
  it.each([
    [7, 2, 2],
    [10, 2, 2],
    [11, 2, 2],
    [12, 2, 0],
    [13, 2, 0],
    [14, 1, 0],
    [16, 1, 0],
  ])('for under %i is spoken of by %i bodies, %i of them against it', (age, bodies, against) => {
    const cautions = headingCautions({ hasHeading: true }, at(age))
    expect(cautions).toHaveLength(bodies)
    expect(cautions.filter(({ isWarning }) => isWarning)).toHaveLength(against)
    for (const { words } of cautions) expect(words).toContain('the rules where you play')
  })

  it('for under 12 says how few', () => {
    const [uk] = headingCautions({ hasHeading: true }, at(12))
    expect(uk?.words).toMatch(/one practice a month.*five headers/)
  })
})

describe('space', () => {
  it('is a warning below any youth pitch, and above the largest of the age', () => {
    // 30 × 20 m: for 16 children 37.5 m², below the 39.19 m² of a US 4 v 4 pitch at its smallest; for 3, 200 m².
    const crowded = spaceCautions(aSheet({ rounds: [aRound(['8v8'])] }), at(10))
    expect(crowded).toMatchObject([{ subject: 'space', isWarning: true }])
    expect(crowded[0]?.words).toContain('38 m²')
    expect(crowded[0]?.source.body).toBe('U.S. Soccer')
    const empty = spaceCautions(aSheet({ rounds: [aRound(['2v1'])] }), at(10))
    expect(empty[0]?.words).toMatch(/200 m², more than the 175 m² of the largest pitch/)
    expect(spaceCautions(aSheet({ rounds: [aRound(['4v4'])] }), at(10))).toEqual([])
  })

  it('of the free game does not count: whoever is there plays', () => {
    const free = aRound(['8v8'], { isFreeGame: true })
    expect(spaceCautions(aSheet({ rounds: [aRound(['4v4']), free] }), at(10))).toEqual([])
  })
})

describe('numbers', () => {
  it.each([
    ['7v7', 10, 0],
    ['7v6+1', 10, 0],
    ['7v7+1', 10, 1],
    ['8v8', 10, 1],
    ['8v8', 12, 0],
    ['6v6', 8, 1],
  ])('%s for under %i', (shape, age, warnings) => {
    expect(numberCautions({ rounds: [aRound([shape])] }, at(age))).toHaveLength(warnings)
  })
})

describe('all cautions', () => {
  it('have warnings first, then heat, concussion and load, each with its source', () => {
    const cautions = designCautions(aSheet({ hasHeading: true, rounds: [aRound(['8v8'])] }), at(10))
    const first = cautions.findIndex(({ isWarning }) => !isWarning)
    expect(cautions.slice(first).every(({ isWarning }) => !isWarning)).toBe(true)
    expect(new Set(cautions.slice(first).map(({ subject }) => subject))).toEqual(
      new Set(['heat', 'concussion', 'load']),
    )
    for (const { source } of cautions) expect(source.title.length).toBeGreaterThan(10)
  })
})
