import { describe, expect, it } from 'vitest'
import type { Deed, PitchEvent } from '#pitch/pitch-event'
import { withoutNames } from '#pitch/without-names'

const event = (deed: Deed): PitchEvent => ({ id: 'e', deviceId: 'd', at: 1, deed })

describe('a tap without names', () => {
  it('has no new face’s name, and nothing that is said of a plan', () => {
    const face = withoutNames(event({ kind: 'guest', playerId: 'p', name: 'Zoe Pike' }))
    const plan = withoutNames(event({ kind: 'replan', fromTurn: 2, turns: [], sentence: 'Ada catches up.' }))
    expect(JSON.stringify([face, plan])).not.toMatch(/Zoe|Pike|Ada/)
    // It can still be sent: a name is asked for.
    expect(face.deed).toEqual({ kind: 'guest', playerId: 'p', name: 'New face' })
    expect(plan.deed).toMatchObject({ kind: 'replan', fromTurn: 2 })
  })

  it('is the same tap otherwise', () => {
    const tap = event({ kind: 'register', playerId: 'p', state: 'out' })
    expect(withoutNames(tap)).toEqual(tap)
  })
})
