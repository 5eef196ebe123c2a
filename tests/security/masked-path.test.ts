import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { maskedPath } from '../../src/boot/masked-path.mjs'

const id = '0199a3c1-7f00-7000-8000-00000000abcd'

describe('an address in the log', () => {
  it.each([
    ['/squads/0199a3c1-7f00-7000-8000-00000000abcd/today', '/squads/[id]/today'],
    [`/family/${id}?season=x#top`, '/family/[id]'],
    ['/welcome/short', '/welcome/[code]'],
    ['/join/a.b.c', '/join/[code]'],
    ['/calendar/a.b.c.ics', '/calendar/[code]'],
    ['/set-up?code=ABCD-EFGH', '/set-up'],
    ['/api/auth/magic-link/verify?token=abc', '/api/auth/magic-link/[code]'],
    ['/Jane%20Doe', '/[…]'],
    ['/squads/1/export/roster.csv', '/squads/[…]/export/roster.csv'],
    ['/', '/'],
  ])('%s is written %s', (url, masked) => expect(maskedPath(url)).toBe(masked))

  it('has no secret of at least 128 bits in it, wherever it stands, and is never long', () => {
    const secret = fc
      .uint8Array({ minLength: 16, maxLength: 48 })
      .map((bytes) => Buffer.from(bytes).toString('base64url'))
    const place = fc.constantFrom('/', '/a/', '/welcome/', '/x?y=', '/squads/#', '/squads//')
    fc.assert(
      fc.property(secret, place, (code, before) => {
        // A secret of small letters alone would look like a word; sixteen random bytes are never that in practice.
        fc.pre(/[A-Z0-9_-]/.test(code))
        const masked = maskedPath(before + code)
        return !masked.includes(code) && masked.length <= 200
      }),
      { numRuns: 300 },
    )
  })

  it('is one line whatever was sent', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => !/[\n\r"]/.test(maskedPath(`/${text}`))))
  })
})
