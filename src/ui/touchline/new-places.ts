import type { Line } from '#match/match'
import type { PlayerId } from '#squad/player'
import type { PlacedPlayer } from '#touchline/match-deed'

type Placed = readonly PlacedPlayer[]

/** Two change places: both on, or one comes on where the other was. Where neither is on nothing changes. */
export function withSwap(on: Placed, one: PlayerId, other: PlayerId): Placed {
  return on.map(({ playerId, line }) => {
    if (playerId === one) return { playerId: other, line }
    return { playerId: playerId === other ? one : playerId, line }
  })
}

/** One plays in another line; whoever is in goal makes way for a new keeper and takes its line. */
export function withLine(on: Placed, id: PlayerId, line: Line): Placed {
  const old = on.find(({ playerId }) => playerId === id)
  if (!old) return on
  return on.map((placed) => {
    if (placed.playerId === id) return { ...placed, line }
    return line === 'keeper' && placed.line === 'keeper' ? { ...placed, line: old.line } : placed
  })
}
