import { beforeEach, describe, expect, it } from 'vitest'
import { sign, unsign } from '#server/sign'

beforeEach(() => {
  process.env.TURNBOOK_SECRET = 'a-secret-of-this-test-only-0123456789'
})

describe('a signed value', () => {
  it('gives its text back', () => {
    expect(unsign(sign('club/person'))).toBe('club/person')
    expect(unsign(sign('a.b.c'))).toBe('a.b.c')
  })

  it.each(['', 'club/person', 'club/person.', '.', `${'x'.repeat(10_000)}.y`])(
    'is not believed when forged: %s',
    (forged) => {
      expect(unsign(forged)).toBeNull()
    },
  )

  it('is not believed when changed, or signed elsewhere', () => {
    const signed = sign('club/person')
    expect(unsign(signed.replace('person', 'another'))).toBeNull()
    process.env.TURNBOOK_SECRET = 'the-secret-of-another-place-0123456789'
    expect(unsign(signed)).toBeNull()
  })

  it('needs a secret worth the name', () => {
    process.env.TURNBOOK_SECRET = 'short'
    expect(() => sign('x')).toThrow(/TURNBOOK_SECRET/)
  })
})
