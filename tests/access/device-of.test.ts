import { describe, expect, it } from 'vitest'
import { deviceOf } from '#access/device-of'
import { sayAgo } from '#access/say-ago'

describe('a browser in plain words', () => {
  // Written as these browsers do, from memory.
  it.each([
    [
      'Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.0 Mobile/15E148 Safari/604.1',
      'Safari on an iPhone',
    ],
    [
      'Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0.0.0 Mobile Safari/537.36',
      'Chrome on an Android phone',
    ],
    [
      'Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0.0.0 Safari/537.36 Edg/140.0.0.0',
      'Edge on Windows',
    ],
    ['Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0', 'Firefox on Linux'],
    ['curl/8.0', 'A browser we do not know'],
  ])('%s', (userAgent, said) => expect(deviceOf(userAgent)).toBe(said))
  it('is unknown where nothing is said', () => expect(deviceOf(null)).toBe('A browser we do not know'))
})

describe('how long ago', () => {
  const now = new Date('2026-06-01T12:00:00Z')
  it.each([
    ['2026-06-01T11:59:01Z', 'just now'],
    ['2026-06-01T11:59:00Z', '1 minute ago'],
    ['2026-06-01T09:00:01Z', '2 hours ago'],
    ['2026-05-29T11:00:00Z', '3 days ago'],
    ['2026-06-01T12:00:09Z', 'just now'],
  ])('%s', (then, said) => expect(sayAgo({ moment: new Date(then), now })).toBe(said))
})
