import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { makeSetUpCode } from '../../src/boot/set-up-code.mjs'
import { refuseToMix } from '../../src/boot/what-stands.mjs'

describe('the code of the set-up page', () => {
  it('has 128 bits and more, in letters that are not read as others, and only its SHA-256 is given on', () => {
    const { code, hash } = makeSetUpCode()
    // The alphabet of Crockford's Base32, from memory: no I, L, O, U.
    expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}(-[0-9A-HJKMNP-TV-Z]{4}){6}$/)
    const letters = code.replaceAll('-', '')
    expect(letters.length * Math.log2(32)).toBeGreaterThanOrEqual(128)
    expect(hash).toBe(createHash('sha256').update(letters).digest('hex'))
  })

  it('is another at every start, and uses every letter', () => {
    const codes = Array.from({ length: 200 }, () => makeSetUpCode().code)
    expect(new Set(codes).size).toBe(200)
    expect(new Set(codes.join('').replaceAll('-', '')).size).toBe(32)
  })
})

describe('the demo and a club of people', () => {
  const own = { TURNBOOK_DEMO: '0' }

  it('are never in one database, whichever was there first', () => {
    expect(() => refuseToMix({ hasDemo: false, hasClub: true }, {})).toThrow(/npm start -- --own-club/)
    expect(() => refuseToMix({ hasDemo: true, hasClub: false }, own)).toThrow(/TURNBOOK_DATA/)
    expect(() => refuseToMix({ hasDemo: true, hasClub: false }, { ...own, DATABASE_URL: 'x' })).toThrow(
      /DATABASE_URL/,
    )
    for (const env of [own, {}])
      expect(() => refuseToMix({ hasDemo: true, hasClub: true }, env)).toThrow(/database/)
  })

  it('start where nothing stands, and where their own kind stands', () => {
    for (const env of [own, {}]) refuseToMix({ hasDemo: false, hasClub: false }, env)
    refuseToMix({ hasDemo: true, hasClub: false }, {})
    refuseToMix({ hasDemo: false, hasClub: true }, own)
  })
})
