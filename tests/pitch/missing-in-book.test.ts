import { describe, expect, it } from 'vitest'
import { missingInBook } from '#pitch/missing-in-book'

const sent = [
  { id: '1', deviceId: 'mine' },
  { id: '2', deviceId: 'mine' },
  { id: '3', deviceId: 'theirs' },
]

describe('a book restored from an older copy', () => {
  it('gets again what it lacks, from a coach’s phone also what another phone had tapped', () => {
    const book = { events: [{ id: '1' }], deviceId: 'mine', isHelper: false }
    expect(missingInBook(sent, book)).toEqual(['2', '3'])
    expect(missingInBook(sent, { ...book, isHelper: true })).toEqual(['2'])
  })

  it('gets nothing again that it has', () => {
    expect(missingInBook(sent, { events: sent, deviceId: 'mine', isHelper: false })).toEqual([])
  })
})
