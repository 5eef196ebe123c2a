import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { contentDisposition } from '#exchange/content-disposition'

describe('the name of a download', () => {
  it('is written as RFC 6266 and RFC 8187 have it', () => {
    // RFC 8187, section 3.2.3: "£ and € rates" is UTF-8''%c2%a3%20and%20%e2%82%ac%20rates, hex digits of either case.
    const header = contentDisposition('£ and € rates')
    expect(header.toLowerCase()).toBe(
      `attachment; filename="and  rates"; filename*=utf-8''%c2%a3%20and%20%e2%82%ac%20rates`,
    )
  })

  it.each([
    ['a "b"; filename=x', 'a b filenamex'],
    ['a\r\nset-cookie: x', 'aset-cookie x'],
    ["O'Brien (2) *", 'OBrien (2)'],
    ['../../etc', '....etc'],
    ['שרה', 'file'],
    ['Zoë', 'Zoe'],
  ])('of %j cannot end the header; its plain form is %j', (name, plain) => {
    expect(contentDisposition(name)).toContain(`filename="${plain}"; filename*=UTF-8''`)
  })

  it('holds only characters of RFC 8187, and gives back the name', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1 }), (name) => {
        const [, value = ''] = /filename\*=UTF-8''(.*)$/.exec(contentDisposition(name)) ?? []
        // attr-char and pct-encoded, RFC 8187, section 3.2.1.
        expect(value).toMatch(/^(?:[A-Za-z0-9!#$&+.^_`|~-]|%[0-9A-F]{2})*$/)
        expect(decodeURIComponent(value)).toBe(name)
      }),
    )
  })

  it('survives half a character', () => {
    expect(contentDisposition('a\ud800')).toContain("UTF-8''a%EF%BF%BD")
  })
})
