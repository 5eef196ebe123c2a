import { describe, expect, it } from 'vitest'
import { designsThatServe } from '#practice/our-designs/designs-that-serve'
import { ourDesigns } from '#practice/our-designs/our-designs'
import { ourProgrammeFor, ourProgrammes } from '#themes/our-programmes'
import { ourThemes } from '#themes/our-themes'
import { problemsOfRules } from '#themes/rule-problems'

const servedBy = (key: string) =>
  ourDesigns.filter(
    ({ id, themeId }) =>
      themeId === key || designsThatServe.some((one) => one.themeId === key && one.designId === id),
  )

describe.each(ourProgrammes)('our programme for $name', ({ rules, ages }) => {
  it('asks for the whole of a term, each theme once', () => {
    expect(rules.reduce((sum, { wishedShare }) => sum + wishedShare, 0)).toBeCloseTo(1, 12)
    expect(new Set(rules.map(({ themeId }) => themeId)).size).toBe(rules.length)
  })

  it('has rules that can be kept in a short term', () => {
    expect(problemsOfRules(rules, { weeks: 8, nameOf: (id) => id })).toEqual([])
    const inProgramme = new Set(rules.map(({ themeId }) => themeId))
    for (const { afterThemeId } of rules)
      expect(afterThemeId === null || inProgramme.has(afterThemeId)).toBe(true)
  })

  it('asks for no theme without two designs of ours, so that it can come back with another', () => {
    for (const { themeId } of rules) expect([themeId, servedBy(themeId).length >= 2]).toEqual([themeId, true])
  })

  it('is the one for its ages', () => {
    for (const age of [ages.from, ages.to]) expect(ourProgrammeFor(age)?.rules).toBe(rules)
  })
})

it('there is none for older ones', () => {
  expect(ourProgrammeFor(16)).toBeNull()
})

it('designs that serve a theme besides their own are ours, and so are the themes', () => {
  const themes = new Set<string>(ourThemes.map(({ id }) => id))
  for (const { themeId, designId } of designsThatServe) {
    expect(themes.has(themeId)).toBe(true)
    const design = ourDesigns.find(({ id }) => id === designId)
    expect(design?.name, designId).toBeDefined()
    expect(design?.themeId).not.toBe(themeId)
  }
})
