import { describe, expect, it } from 'vitest'
import { securityTxt } from '#server/security-txt'

// RFC 9116, section 4, its grammar: lines of `name: value`, ended by CRLF or LF; section 2.5: exactly one Expires, at
// least one Contact which is a URI.
const fieldLine = /^(?<name>[A-Za-z0-9-]+): (?<value>\S(?:.*\S)?)$/
const dateTime = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(?:\.\d+)?(?:Z|[+-]\d{2}:\d{2})$/ // RFC 3339, section 5.6
const uri = /^[a-z][a-z0-9+.-]*:\S+$/ // RFC 3986, section 3, in short

const now = new Date('2026-11-26T12:00:00Z')

function fieldsOf(text: string): readonly (readonly [string, string])[] {
  expect(text.endsWith('\r\n')).toBe(true)
  return text
    .split('\r\n')
    .slice(0, -1)
    .map((line) => {
      const { name = '', value = '' } = fieldLine.exec(line)?.groups ?? {}
      expect(name, line).not.toBe('')
      return [name.toLowerCase(), value]
    })
}

describe('security.txt', () => {
  it.each([
    'safety@club.example',
    'mailto:safety@club.example',
    'https://club.example/safety',
    'tel:+1-201-555-0123',
  ])('is as the RFC has it for %s', (contact) => {
    const fields = fieldsOf(securityTxt({ contact, address: 'https://book.example.org', now }) ?? '')
    const valuesOf = (name: string) => fields.filter(([own]) => own === name).map(([, value]) => value)
    expect(valuesOf('contact')).toHaveLength(1)
    expect(valuesOf('contact')[0]).toMatch(uri)
    const [expires = '', ...others] = valuesOf('expires')
    expect(others).toEqual([])
    expect(expires).toMatch(dateTime)
    const days = (Date.parse(expires) - now.getTime()) / 86_400_000
    expect(days).toBeGreaterThan(0)
    // Section 2.5.5: less than a year into the future.
    expect(days).toBeLessThan(365)
    expect(valuesOf('canonical')).toEqual(['https://book.example.org/.well-known/security.txt'])
    expect(valuesOf('preferred-languages')).toEqual(['en'])
  })

  it.each([
    '',
    ' ',
    'ask at the clubhouse',
    'http://club.example',
    'javascript:alert(1)',
    'a@b.c\r\nExpires: never',
    'https://x y',
  ])('is not there for %j', (contact) => expect(securityTxt({ contact, address: '', now })).toBeNull())
})
