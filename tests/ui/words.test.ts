import { describe, expect, it } from 'vitest'
import { formatDay, formatDays } from '#ui/format-day'
import { counted, listed } from '#ui/plural'
import { roleWord, words } from '#ui/words'

const everyText = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : value && typeof value === 'object'
      ? Object.values(value).flatMap(everyText)
      : []

describe('the words of the pages', () => {
  it('keep the words of the code off the pages', () => {
    const forbidden =
      /\b(fold|roll-?up|exposure|ledger|closed form|seats?|gap|tolerance|bench|outnumber\w*|void\w*)\b/i
    const texts = everyText(words)
    expect(texts.length).toBeGreaterThan(50)
    expect(texts.filter((text) => forbidden.test(text))).toEqual([])
  })

  it('say waiting in a practice and off in a match', () => {
    expect([roleWord('rest', 'practice'), roleWord('rest', 'match')]).toEqual(['Waiting', 'Off'])
  })

  it('count in whole words', () => {
    expect(words.turns(1)).toBe('1 turn')
    expect(words.turns(0)).toBe('0 turns')
    expect(words.matches(2)).toBe('2 matches')
    expect(counted(2.46, 'turn')).toBe('2.5 turns')
    expect(counted(12.46, 'turn')).toBe('12 turns')
  })

  it('list names as people do', () => {
    expect(listed(['Ada', 'Bo', 'Cy'])).toBe('Ada, Bo and Cy')
  })
})

describe('days', () => {
  it('are the same day in every zone, also where the clock changes', () => {
    expect(formatDay('2026-03-29', 'short')).toBe('29 Mar')
    expect(formatDay('2026-10-25')).toMatch(/^Sun,? 25 Oct 2026$/)
  })

  it('of a term stand from and to', () => {
    expect(formatDays({ firstDay: '2025-09-01', lastDay: '2025-12-19' })).toBe('1 Sept – 19 Dec 2025')
  })
})
