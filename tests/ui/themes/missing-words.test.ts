import { describe, expect, it } from 'vitest'
import { endText, forecastSentence } from '#ui/themes/missing-words'

const theme = (atEnd: number, dueAtEnd: number) => ({
  themeId: 't',
  met: 1,
  due: 1,
  planned: 0,
  atEnd,
  dueAtEnd,
})

describe('what is missing, in words', () => {
  it('counts what is to come and how many themes end as wished', () => {
    const themes = [theme(3, 3), theme(1.25, 4)]
    expect(forecastSentence({ coming: 7, open: 2, themes })).toBe(
      '7 practices are still to come; 2 have no theme yet. As planned, and if the others go as so far, 1 of 2 themes end with as many practices as wished.',
    )
    expect(forecastSentence({ coming: 1, open: 0, themes: [theme(2, 2)] })).toBe(
      '1 practice is still to come; it has its theme. As planned, 1 of 1 theme ends with as many practices as wished.',
    )
    expect(forecastSentence({ coming: 3, open: 3, themes })).toContain(
      'no theme is planned yet. If they go as so far, 1',
    )
    expect(forecastSentence({ coming: 0, open: 0, themes })).toMatch(/^No practice is still to come/)
  })

  it('says how many practices a theme ends short of, half of one being none', () => {
    expect([theme(1.25, 4), theme(3.6, 4), theme(5, 4)].map(endText)).toEqual([
      '3 too few',
      'as wished',
      'as wished',
    ])
  })
})
