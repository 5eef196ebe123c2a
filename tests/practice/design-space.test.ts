import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readPublishedGuidance } from '#exchange/published-guidance-json'
import { areaPerChild, areaPerChildOver } from '#practice/area-per-child'
import { areaVerdict, tightestPublished } from '#practice/area-sentence'
import { fromMetres, fromSquareMetres, metresInYard, toMetres } from '#practice/area-unit'
import { areaOnPitch } from '#practice/published-guidance'
import { aRound, aSheet } from '../support/design-builder'

const { pitches } = readPublishedGuidance(JSON.parse(readFileSync('seeds/published/guidance.json', 'utf8')))
const yards = (length: number, width: number) => ({
  areaLengthM: toMetres(length, 'yd'),
  areaWidthM: toMetres(width, 'yd'),
})

describe('yards and metres', () => {
  // The international yard of 1959: 0.9144 m exactly, so a square yard is 0.83612736 m².
  it('are one yard for 0.9144 metres', () => {
    expect(metresInYard).toBe(0.9144)
    expect(toMetres(70, 'yd')).toBeCloseTo(64.008, 9)
    expect(fromSquareMetres(0.83612736, 'yd')).toBeCloseTo(1, 12)
  })

  it('come back as they were written', () => {
    for (let length = 2; length <= 130; length += 0.5)
      for (const unit of ['m', 'yd'] as const) expect(fromMetres(toMetres(length, unit), unit)).toBe(length)
  })
})

describe('space for each child', () => {
  // Sums on paper: 70 × 40 yd = 2,800 yd² = 2,341.156608 m²; for twelve 195.10 m², without two keepers 234.12 m².
  it('is the whole ground among those who play, and among those in the field', () => {
    const round = aRound(['3v2+1', '3v2+1'])
    const area = areaPerChild(yards(70, 40), round)
    expect(area?.all).toBeCloseTo(195.096, 2)
    expect(area?.withoutKeepers).toBeCloseTo(234.116, 2)
  })

  it('has no value without places, and none for the field when all keep goal', () => {
    expect(areaPerChild(aSheet(), aRound([]))).toBeNull()
    expect(areaPerChild(aSheet(), aRound(['0v0+2']))).toEqual({ all: 300, withoutKeepers: null })
    expect(areaPerChildOver(aSheet(), [aRound([]), aRound(['2v1']), aRound(['3v3'])])).toEqual({
      least: 100,
      most: 200,
    })
  })

  // m² for each player on youth pitches, worked out again from their published sizes: US 4 v 4 (25-35 × 15-25 yd)
  // 39.19-91.45, 7 v 7 (55-65 × 35-45 yd) 114.97-174.69, 9 v 9 (70-80 × 45-55 yd) 146.32-204.39; England 5 v 5
  // (40 × 30 yd) 100.34, 7 v 7 (60 × 40 yd) 143.34, 9 v 9 (80 × 50 yd) 185.81.
  it.each([
    ['U.S. Soccer', 7, 39.19, 91.45],
    ['U.S. Soccer', 10, 114.97, 174.69],
    ['U.S. Soccer', 12, 146.32, 204.39],
    ['the English association', 8, 100.34, 100.34],
    ['the English association', 10, 143.34, 143.34],
    ['the English association', 12, 185.81, 185.81],
  ])('on a pitch of %s for under %i is from %f to %f m²', (body, age, least, most) => {
    const pitch = pitches.find(
      ({ source, ages }) => source.body === body && ages.from <= age && age <= ages.to,
    )
    const area = pitch && areaOnPitch(pitch)
    expect(area?.least).toBeCloseTo(least, 2)
    expect(area?.most).toBeCloseTo(most, 2)
  })

  it('is least of all on the pitch of the youngest', () => {
    expect(tightestPublished(pitches)?.ages).toEqual({ from: 6, to: 8 })
    expect(tightestPublished([])).toBeNull()
  })
})

describe('the sentence about space', () => {
  const at = (age: number) => ({ age, pitches })

  it.each([
    [{ least: 50, most: 90 }, 'tighter'],
    [{ least: 90, most: 120 }, 'within'],
    [{ least: 120, most: 140 }, 'within'],
    [{ least: 176, most: 200 }, 'wider'],
  ])('holds %o against a match of under-tens: %s', (area, verdict) => {
    expect(areaVerdict(area, at(10)).verdict).toBe(verdict)
  })

  it('names who publishes the pitches, their space and the age', () => {
    const { sentence } = areaVerdict({ least: 65, most: 80 }, at(10))
    expect(sentence).toMatch(/^Each child has 65 to 80 m²: tighter than a match/)
    expect(sentence).toContain('U.S. Soccer and the English association for under 10 (115 to 175 m² each)')
  })

  it('says so where nothing is published', () => {
    const { verdict, sentence } = areaVerdict({ least: 65.4, most: 65.4 }, at(5))
    expect(verdict).toBe('nothingPublished')
    expect(sentence).toMatch(/^Each child has 65 m²; no youth pitch/)
  })
})
