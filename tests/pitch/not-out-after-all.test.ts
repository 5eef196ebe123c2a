import { describe, expect, it } from 'vitest'
import { inOrder } from '#pitch/event-order'
import { notOutAfterAll } from '#pitch/not-out-after-all'
import type { PitchEvent } from '#pitch/pitch-event'
import { eventsThatStand } from '#pitch/standing-events'
import { undoSteps } from '#pitch/undo-steps'

const out = (id: string, playerId: string, at: number): PitchEvent => ({
  ...{ id, deviceId: 'a', at },
  deed: { kind: 'register', playerId, state: 'out' },
})

describe('who is not out for today after all', () => {
  it('has every tap that said so taken back, and nobody else’s', () => {
    const taps = [out('1', 'anna', 1), out('2', 'anna', 2), out('3', 'ben', 3)]
    const deeds = notOutAfterAll(undoSteps(eventsThatStand(taps), []), 'anna')
    const after = [...taps, ...deeds.map((deed, index) => ({ id: `u${index}`, deviceId: 'a', at: 9, deed }))]
    expect(eventsThatStand(inOrder(after)).standing.map(({ id }) => id)).toEqual(['3'])
  })

  it('is tapped as here, by a second answer, where only the book has it as out', () => {
    expect(notOutAfterAll([], 'anna')).toEqual([
      { kind: 'register', playerId: 'anna', state: 'here', secondAnswer: true },
    ])
  })
})
