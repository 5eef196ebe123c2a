import { byName } from '#fairness/book/by-name'
import type { Player } from '#squad/player'

/** The players by name, two of the same name told apart: the second is "Sam Reed (2)". The same key always comes first. */
export function namesApart<Named extends Pick<Player, 'id' | 'name'>>(
  players: readonly Named[],
): readonly Named[] {
  const seen = new Map<string, number>()
  return byName(players).map((player) => {
    const times = (seen.get(player.name) ?? 0) + 1
    seen.set(player.name, times)
    return times === 1 ? player : { ...player, name: `${player.name} (${times})` }
  })
}
