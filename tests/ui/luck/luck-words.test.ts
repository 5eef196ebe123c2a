import { describe, expect, it } from 'vitest'
import { howOften } from '#ui/luck/how-often'
import { squadMeaning, squadSentence, tooFewSentence, wayText } from '#ui/luck/luck-words'

describe('a chance as people say it', () => {
  it.each([
    [1, 'nearly every time'],
    [0.9, 'about nine times in ten'],
    [0.75, 'about three times in four'],
    [0.66, 'about two times in three'],
    [0.5, 'about every second time'],
    [0.34, 'about one time in three'],
    [0.24, 'about one time in four'],
    [0.052, 'about one time in twenty'],
    [0.01, 'about one time in a hundred'],
    [0.001, 'less than one time in three hundred'],
  ])('%f is "%s"', (chance, said) => {
    expect(howOften(chance)).toBe(said)
  })

  it('falls in steps: what is rarer never sounds more frequent', () => {
    const said = [...new Set(Array.from({ length: 1000 }, (_, at) => howOften(1 - at / 1000)))]
    // Each phrase is said of one unbroken stretch.
    for (const phrase of said) {
      const at = Array.from({ length: 1000 }, (_, n) => howOften(1 - n / 1000) === phrase)
      expect(at.lastIndexOf(true) - at.indexOf(true) + 1).toBe(at.filter(Boolean).length)
    }
  })
})

describe('the words of luck or habit', () => {
  it('say it of the squad first, and accuse nobody', () => {
    const all = [0.001, 0.05, 0.34, 0.97].map(
      (pValue) => `${squadSentence({ pValue })} ${squadMeaning({ pValue })}`,
    )
    expect(all[2]).toBe(
      'A fair draw would give gaps like these, or wider ones, about one time in three. So luck is enough to explain them.',
    )
    expect(new Set(all).size).toBe(4)
    for (const text of all) expect(text).not.toMatch(/unfair|fault|blame|favour|bias|prefer|wrong|coach/i)
  })

  it('say what single players would need', () => {
    expect(tooFewSentence(0.3)).toContain('30 % of them were.')
    expect(tooFewSentence(null)).toContain('None of them were.')
  })

  it('say how it was found', () => {
    expect(wayText({ way: 'everyDraw', draws: 1024, asWide: 22, pValue: 22 / 1024 })).toBe(
      'Of all 1024 draws there could be, 22 gave gaps as wide: a chance of 2.1 %.',
    )
    expect(wayText({ way: 'drawnAtRandom', draws: 999, asWide: 0, pValue: 0.001 })).toContain('at most 0.1 %')
  })
})
