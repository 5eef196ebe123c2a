import { describe, expect, it } from 'vitest'
import type { PlacedPlayer } from '#touchline/match-deed'
import { withLine, withSwap } from '#ui/touchline/new-places'

const on: readonly PlacedPlayer[] = [
  { playerId: 'ana', line: 'keeper' },
  { playerId: 'bo', line: 'back' },
  { playerId: 'cy', line: 'forward' },
]
const linesOf = (placed: readonly PlacedPlayer[]) =>
  Object.fromEntries(placed.map(({ playerId, line }) => [playerId, line]))

describe('other places', () => {
  it('two who are on change lines', () => {
    expect(linesOf(withSwap(on, 'bo', 'cy'))).toEqual({ ana: 'keeper', bo: 'forward', cy: 'back' })
  })

  it('one comes on where the other was, whichever of the two was tapped', () => {
    const changed = { ana: 'keeper', di: 'back', cy: 'forward' }
    expect(linesOf(withSwap(on, 'bo', 'di'))).toEqual(changed)
    expect(linesOf(withSwap(on, 'di', 'bo'))).toEqual(changed)
  })

  it('two who are off change nothing', () => {
    expect(withSwap(on, 'di', 'eli')).toEqual(on)
  })

  it('a new keeper and the old one change lines; another line is taken as it is', () => {
    expect(linesOf(withLine(on, 'cy', 'keeper'))).toEqual({ ana: 'forward', bo: 'back', cy: 'keeper' })
    expect(linesOf(withLine(on, 'cy', 'middle'))).toEqual({ ana: 'keeper', bo: 'back', cy: 'middle' })
    expect(withLine(on, 'di', 'middle')).toEqual(on)
  })
})
