import type { Day } from '#common/time'
import type { PlayerId } from '#squad/player'

/** From this day on a player may be put in goal, or asks not to be. Each says otherwise than what held on its day before. */
export type KeepsChange = { readonly playerId: PlayerId; readonly day: Day; readonly keeps: boolean }

/**
 * Whether a player might be put in goal on a day: as the last change on or before it says, and before every change the
 * opposite of the first. Without any, as the player stands. `changes`: of any players; of one day, in order of writing.
 */
export function keepsOn(
  player: { readonly id: PlayerId; readonly keeps: boolean },
  { changes, day }: { readonly changes: readonly KeepsChange[]; readonly day: Day },
): boolean {
  const own = inOrder(changes.filter(({ playerId }) => playerId === player.id))
  const last = own.filter((change) => change.day <= day).at(-1)
  if (last) return last.keeps
  const first = own.at(0)
  return first ? !first.keeps : player.keeps
}

/** Who of the players might be put in goal on a day. */
export function ableOn(
  players: readonly { readonly id: PlayerId; readonly keeps: boolean }[],
  at: { readonly changes: readonly KeepsChange[]; readonly day: Day },
): ReadonlySet<PlayerId> {
  return new Set(players.filter((player) => keepsOn(player, at)).map(({ id }) => id))
}

/** The players as they stood on a day. */
export function asOf<Of extends { readonly id: PlayerId; readonly keeps: boolean }>(
  players: readonly Of[],
  at: { readonly changes: readonly KeepsChange[]; readonly day: Day },
): readonly Of[] {
  return players.map((player) => ({ ...player, keeps: keepsOn(player, at) }))
}

/** Whether it was not the same on all of the days, both included. */
export function hasKeepsChanged(
  player: { readonly id: PlayerId; readonly keeps: boolean },
  { changes, from, to }: { readonly changes: readonly KeepsChange[]; readonly from: Day; readonly to: Day },
): boolean {
  const inside = changes.map(({ day }) => day).filter((day) => from < day && day <= to)
  const atFirst = keepsOn(player, { changes, day: from })
  return inside.some((day) => keepsOn(player, { changes, day }) !== atFirst)
}

/** The first day after the one given on which something else is written of the player; null when nothing is. */
export function nextChangeAfter(
  changes: readonly KeepsChange[],
  at: { readonly playerId: PlayerId; readonly day: Day },
): Day | null {
  const own = inOrder(changes.filter(({ playerId }) => playerId === at.playerId))
  return own.find(({ day }) => day > at.day)?.day ?? null
}

/** By day. Of one day the order given stays: sorting is stable. */
function inOrder(changes: readonly KeepsChange[]): readonly KeepsChange[] {
  return [...changes].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
}
