import { describe, expect, it } from 'vitest'
import { plannedAbout } from '#practice/planned-about'

const designs = [
  { id: 'ferry', themeId: 'passing' },
  { id: 'harbour', themeId: null },
]

describe('the design a practice is planned with', () => {
  it('is about what the practice is planned to be about', () => {
    expect(plannedAbout(designs, { designId: 'harbour', themeId: 'finishing' })).toEqual([
      { id: 'ferry', themeId: 'passing' },
      { id: 'harbour', themeId: 'finishing' },
    ])
  })

  it('keeps its own theme where nothing else is planned', () => {
    expect(plannedAbout(designs, { designId: 'ferry', themeId: null })).toEqual(designs)
    expect(plannedAbout(designs, { designId: null, themeId: 'finishing' })).toEqual(designs)
  })
})
