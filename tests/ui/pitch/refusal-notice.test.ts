import { describe, expect, it } from 'vitest'
import { refusalSentence } from '#ui/pitch/refusal-notice'

const cast = { nameOf: () => 'Bao' }

describe('what the book did not take', () => {
  it('is named by what was tapped, with the book’s own sentence', () => {
    const deed = { kind: 'register', playerId: 'b', state: 'gone' } as const
    expect(refusalSentence({ id: '1', deed, why: 'The practice is full.' }, cast)).toBe(
      'Bao gone: The practice is full.',
    )
    expect(refusalSentence({ id: '1', deed, why: null }, cast)).toBe('Bao gone: The book did not take it.')
  })
})
