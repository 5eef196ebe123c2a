import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { foldLine } from '#exchange/icalendar/fold-line'
import { lineValue, textValue } from '#exchange/icalendar/text-value'

// All of Unicode but halves of characters, which no text that is kept has.
const anyCharacter = fc
  .oneof(fc.integer({ min: 0, max: 0xd7ff }), fc.integer({ min: 0xe000, max: 0x10ffff }))
  .map((point) => String.fromCodePoint(point))
const octets = (text: string) => new TextEncoder().encode(text)

/** Backwards by RFC 5545, 3.1, on octets: a break is taken out before any character is read. */
function unfolded(text: string): string {
  return Buffer.from(octets(text))
    .toString('latin1')
    .replaceAll(/\r\n[ \t]/g, '')
}
const asRead = (text: string) => new TextDecoder('utf-8', { fatal: true }).decode(Buffer.from(text, 'latin1'))

describe('a line', () => {
  it('is folded so that the example of RFC 5545, 3.1, comes out as it says', () => {
    const line = 'DESCRIPTION:This is a long description that exists on a long line.'
    expect(foldLine(line)).toBe(line)
    // Its own three folded lines say the same when unfolded.
    expect(
      asRead(unfolded('DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line.')),
    ).toBe(line)
    expect(asRead(unfolded(foldLine(line.repeat(5))))).toBe(line.repeat(5))
  })

  it.each([
    [75, 1],
    [76, 2],
    [149, 2],
    [150, 3],
  ])('of %i octets is %i lines', (length, lines) => {
    expect(foldLine('x'.repeat(length)).split('\r\n')).toHaveLength(lines)
  })

  it('has 75 octets at most, whole characters, and says the same when unfolded, whatever stands in it', () => {
    const anyText = fc
      .string({ unit: anyCharacter, maxLength: 300 })
      .map((text) => text.replaceAll(/[\r\n]/g, ''))
    const wide = fc.string({ unit: fc.constantFrom('a', 'é', '字', '🦔', '👩‍👧'), maxLength: 200 })
    fc.assert(
      fc.property(fc.oneof(anyText, wide), (text) => {
        const folded = foldLine(text)
        const wrong = folded
          .split('\r\n')
          .filter((line) => octets(line).length > 75 || /\p{Surrogate}/u.test(line))
        expect(wrong).toEqual([])
        expect(asRead(unfolded(folded))).toBe(text)
      }),
      { numRuns: 300 },
    )
  })
})

describe('a text', () => {
  it('of several lines is written as the example of RFC 5545, 3.3.11', () => {
    expect(textValue('Project XYZ Final Review\nConference Room - 3B\nCome Prepared.')).toBe(
      'Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.',
    )
  })

  // The same section: what has a backslash before it, and that a colon has none.
  it.each([
    ['a;b,c\\d', 'a\\;b\\,c\\\\d'],
    ['\\n', '\\\\n'],
    ['10:30 "sharp"', '10:30 "sharp"'],
    ['one\r\ntwo\rthree\u2028four\u0085five', 'one\\ntwo\\nthree\\nfour\\nfive'],
    ['bell\u0007 zero\u0000 delete\u007f high\u009b tab\t', 'bell zero delete high tab\t'],
  ])('%j is written %j', (text, written) => {
    expect(textValue(text)).toBe(written)
  })

  it('that is a title stays one line', () => {
    expect(lineValue('  Late\r\nBEGIN:VEVENT\u0085\n ')).toBe('Late BEGIN:VEVENT')
  })
})
