import { describe, expect, it } from 'vitest'
import { pitchLimits, readBatch, readEvents } from '#exchange/pitch-batch'
import { pitchEventShape } from '#exchange/pitch-json'
import { firstBatch } from '#pitch/first-batch'
import type { PitchEvent } from '#pitch/pitch-event'

const uuid = (index: number) => `0190aaaa-0000-7000-8000-${String(index).padStart(12, '0')}`
const event = (index: number, letters = 0): PitchEvent => ({
  id: uuid(index),
  deviceId: uuid(0),
  at: index,
  deed: { kind: 'replan', fromTurn: 0, turns: [], sentence: 'x'.repeat(letters) },
})
const many = (count: number, letters = 0) =>
  Array.from({ length: count }, (_, index) => event(index, letters))

describe('the first of what waits to be sent', () => {
  it('is all of it, as many as are allowed, or none', () => {
    expect(firstBatch([], { events: 5, letters: 1000 })).toEqual([])
    expect(firstBatch(many(5), { events: 5, letters: 10_000 })).toHaveLength(5)
    expect(firstBatch(many(6), { events: 5, letters: 10_000 })).toHaveLength(5)
  })

  it('is no longer together than is allowed, but one at least', () => {
    const own = JSON.stringify(event(0, 100)).length + 1
    expect(firstBatch(many(6, 100), { events: 9, letters: 3 * own })).toHaveLength(3)
    expect(firstBatch(many(6, 100), { events: 9, letters: 3 * own - 1 })).toHaveLength(2)
    expect(firstBatch(many(6, 100), { events: 9, letters: 1 })).toHaveLength(1)
  })

  it('comes through whole, batch by batch, however long the plans are', () => {
    const waiting = many(450, 900)
    const most = { events: 200, letters: 100_000 }
    const sent: string[] = []
    for (let left: readonly PitchEvent[] = waiting; left.length > 0; ) {
      const events = firstBatch(left, most)
      const body = JSON.stringify({ deviceId: uuid(0), cursor: 0, events })
      expect(body.length).toBeLessThan(pitchLimits.batchLetters)
      const read = readBatch(JSON.parse(body))
      if (read.ok) sent.push(...readEvents(pitchEventShape, read.batch.events).events.map(({ id }) => id))
      left = left.slice(events.length)
    }
    expect(sent).toEqual(waiting.map(({ id }) => id))
  })
})
