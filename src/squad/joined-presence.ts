import type { Interval } from '#common/time'
import type { PlayerId } from '#squad/player'
import type { PresenceLine } from '#squad/presence'

/** Each player's time present, in order of time, lines that touch joined into one. In order of first mention. */
export type JoinedPresence = ReadonlyMap<PlayerId, readonly Interval[]>

/** Joins the lines of a register that touch (one's `to` is the other's `from`), whatever order they were written in. */
export function joinPresence(register: readonly PresenceLine[]): JoinedPresence {
  const byPlayer = new Map<PlayerId, Interval[]>()
  for (const { playerId, from, to } of register) {
    const own = byPlayer.get(playerId)
    if (own) own.push({ from, to })
    else byPlayer.set(playerId, [{ from, to }])
  }
  return new Map([...byPlayer].map(([playerId, lines]) => [playerId, joinTouching(lines)]))
}

/** True when one joined line of the player covers the whole of the interval. */
export function isPresentThroughout(joined: JoinedPresence, playerId: PlayerId, interval: Interval): boolean {
  return (joined.get(playerId) ?? []).some((line) => line.from <= interval.from && interval.to <= line.to)
}

/** Who is present for the whole of the interval, in the register's order. */
export function listPresent(joined: JoinedPresence, interval: Interval): readonly PlayerId[] {
  return [...joined.keys()].filter((playerId) => isPresentThroughout(joined, playerId, interval))
}

function joinTouching(lines: readonly Interval[]): readonly Interval[] {
  const joined: Interval[] = []
  for (const line of [...lines].sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1)
    if (last && line.from <= last.to) {
      joined[joined.length - 1] = { from: last.from, to: Math.max(last.to, line.to) }
    } else {
      joined.push(line)
    }
  }
  return joined
}
