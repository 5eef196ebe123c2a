import { describe, expect, it } from 'vitest'
import { endsText } from '#ui/ahead/end-text'

describe('where somebody ends, in words', () => {
  it.each([
    [{ from: -720, to: 0 }, '12 min less → even'],
    [{ from: 0, to: 660 }, 'even → 11 min more'],
    [{ from: 120, to: 120 }, '2 min more'],
    // Both less than half a minute from an even share.
    [{ from: 20, to: -29 }, 'even'],
  ])('%o is "%s"', (ends, said) => {
    expect(endsText(ends)).toBe(said)
  })
})
