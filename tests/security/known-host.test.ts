import { describe, expect, it } from 'vitest'
import { isKnownHost } from '../../src/boot/known-host.mjs'

// Poisoned links and caches by a Host header of somebody's own: OWASP Web Security Testing Guide, WSTG-INPV-17, from memory.
describe('a host', () => {
  const own = 'https://book.example.org'

  it.each([
    'book.example.org',
    'Book.Example.org',
    'book.example.org:443',
    'localhost:3000',
    '127.0.0.1',
    '[::1]:3000',
  ])('is known when it is %s', (host) => expect(isKnownHost(host, own)).toBe(true))

  it.each([
    undefined,
    '',
    'evil.example',
    'book.example.org.evil.example',
    'book.example.org:8443',
    'evil@book.example.org',
    'book.example.org/evil',
    'book.example.org?x',
    'book.example.org#x',
    'book.example.org, evil.example',
    'localhost.evil.example',
    '127.0.0.1.evil.example',
    'book.example.org\\evil',
    '%62ook.example.org',
  ])('is none of ours when it is %s', (host) => expect(isKnownHost(host, own)).toBe(false))

  it('may have a port that the address names', () => {
    expect(isKnownHost('club.example:8443', 'https://club.example:8443')).toBe(true)
    expect(isKnownHost('club.example', 'https://club.example:8443')).toBe(false)
  })
})
