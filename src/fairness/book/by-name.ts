import type { Player } from '#squad/player'

/** The order of players on every page: by name, then by key, so that no two readings differ. Never by a figure. */
export function byName<Named extends Pick<Player, 'id' | 'name'>>(
  players: readonly Named[],
): readonly Named[] {
  return [...players].sort(
    (a, b) => a.name.localeCompare(b.name, 'en') || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0),
  )
}
