import 'server-only'
import type { PlayerId } from '#squad/player'
import type { MatchDeed, PlacedPlayer } from '#touchline/match-deed'

/** What of a deed beside a match is this child's: where it was put, what was said of it. */
export function toldOfMatch(
  deed: MatchDeed,
  playerId: PlayerId,
): { readonly what: string; readonly said: Readonly<Record<string, unknown>> } {
  return { what: deed.kind, said: saidOf(deed, playerId) }
}

function saidOf(deed: MatchDeed, playerId: PlayerId): Readonly<Record<string, unknown>> {
  switch (deed.kind) {
    case 'kickOff':
    case 'changeMade':
    case 'places':
      return lineIn(deed.on, playerId)
    case 'replan': {
      const own = deed.spells.filter((spell) => spell.playerId === playerId)
      return { planned: own.map(({ line, start, end }) => ({ line, from: start, to: end })) }
    }
    case 'register':
      return { state: deed.state }
    case 'sentOff':
      return { seconds: deed.seconds }
    default:
      return {}
  }
}

function lineIn(on: readonly PlacedPlayer[], playerId: PlayerId): Readonly<Record<string, unknown>> {
  const own = on.find((placed) => placed.playerId === playerId)
  return own ? { line: own.line } : {}
}
