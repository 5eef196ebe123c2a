import { describe, expect, it } from 'vitest'
import { offlineSentence, type Saved, savedLine } from '#ui/pitch/saved-line'

const saved = (change: Partial<Saved>): Saved => ({
  tapped: 12,
  waiting: 0,
  refused: 0,
  sentAt: '18:42',
  signal: { kind: 'sent' },
  ...change,
})

describe('what is saved where', () => {
  it.each([
    [saved({}), 'All sent 18:42'],
    [saved({ tapped: 0, sentAt: null }), 'Nothing tapped yet'],
    [saved({ waiting: 3 }), '12 taps on this phone, 3 not sent yet'],
    [
      saved({ tapped: 1, waiting: 1, signal: { kind: 'noSignal' } }),
      '1 tap on this phone, 1 not sent yet · no signal',
    ],
    [saved({ refused: 1 }), 'All sent 18:42 · 1 not taken by the book'],
    [
      saved({ waiting: 2, signal: { kind: 'refused', why: 'You are signed out on this phone.' } }),
      '12 taps on this phone, 2 not sent yet · You are signed out on this phone.',
    ],
  ])('is said in one line', (of, line) => {
    expect(savedLine(of)).toBe(line)
  })

  it('is nothing where the browser keeps nothing, whatever else is known', () => {
    expect(savedLine(saved({ signal: { kind: 'notKept' } }))).toMatch(/^Not saved: .* paper/)
  })
})

it('an address that is not secure is said in one sentence; a phone that is ready says nothing', () => {
  expect(offlineSentence('insecure')).toMatch(/^This address is not secure[^.]*\.$/)
  expect(offlineSentence('ready')).toBeNull()
  expect(offlineSentence('looking')).toBeNull()
})
