import { describe, expect, it } from 'vitest'
import { checkOwnAddress } from '../../src/boot/own-address.mjs'

const check = (env: Record<string, string>) => () => checkOwnAddress(env as NodeJS.ProcessEnv)

describe('what the settings say of the outside', () => {
  it.each([
    'https://book.example.org',
    'https://book.example.org/',
    'https://club.example:8443',
    'http://10.0.0.5:3000',
  ])('%s can be the address in front', (address) => expect(check({ TURNBOOK_URL: address })).not.toThrow())

  it.each([
    'book.example.org',
    'https://book.example.org/pages',
    'ftp://book.example.org',
    'https://a@book.example.org',
    'https://x y',
    'yes',
  ])('%s cannot, and the sentence says what would be right', (address) =>
    expect(check({ TURNBOOK_URL: address })).toThrow(
      `TURNBOOK_URL is "${address}"; it should be the address in front and nothing behind it, like https://`,
    ),
  )

  it('whom to tell of a hole is an address for mail or a secure link', () => {
    for (const contact of [
      'a@club.example',
      'mailto:a@club.example',
      'https://club.example/safety',
      'tel:+12015550123',
    ])
      expect(check({ TURNBOOK_CONTACT: contact })).not.toThrow()
    for (const contact of ['at the clubhouse', 'http://club.example', 'a@b@c', 'javascript:alert(1)'])
      expect(check({ TURNBOOK_CONTACT: contact })).toThrow(/^TURNBOOK_CONTACT is/)
  })
})
