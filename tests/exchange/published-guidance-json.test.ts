import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readPublishedGuidance } from '#exchange/published-guidance-json'

const file = JSON.parse(readFileSync('seeds/published/guidance.json', 'utf8'))

describe('the file of published figures', () => {
  it('names a body, a title, a season and where it was read for each of them', () => {
    const { pitches, heading, welfare } = readPublishedGuidance(file)
    for (const { source } of [...pitches, ...heading, ...welfare])
      for (const part of [source.body, source.title, source.season, source.readAt])
        expect(part.trim()).not.toBe('')
    expect(new Set(welfare.map(({ subject }) => subject))).toEqual(new Set(['heat', 'concussion', 'load']))
  })

  it('has lengths in metres, the least no longer than the most, for every age from six to eighteen', () => {
    const { pitches } = readPublishedGuidance(file)
    for (const { lengthM, widthM } of pitches) {
      expect(lengthM.least).toBeLessThanOrEqual(lengthM.most)
      expect(widthM.least).toBeLessThanOrEqual(widthM.most)
      expect(widthM.most).toBeLessThanOrEqual(lengthM.most)
    }
    for (let age = 6; age <= 18; age += 1)
      expect(
        pitches.some(({ ages }) => ages.from <= age && age <= ages.to),
        `under ${age}`,
      ).toBe(true)
    // 60 × 40 yd = 54.864 × 36.576 m.
    const seven = pitches.find(({ source, ages }) => source.body.includes('English') && ages.from === 9)
    expect(seven?.lengthM.most).toBeCloseTo(54.864, 9)
    expect(seven?.widthM.most).toBeCloseTo(36.576, 9)
  })

  it('is refused when a figure names a source that is not there, or something is missing', () => {
    const unsourced = { ...file, welfare: [{ ...file.welfare[0], source: 'nobody' }] }
    expect(() => readPublishedGuidance(unsourced)).toThrow('nobody')
    expect(() => readPublishedGuidance({ ...file, pitches: [{}] })).toThrow()
    expect(() => readPublishedGuidance(null)).toThrow()
  })
})
