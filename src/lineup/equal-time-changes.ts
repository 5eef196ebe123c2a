import { fairLineUp } from '#lineup/fair-line-up'
import type { LineUpProblem } from '#lineup/problem'
import { placesInAll } from '#match/format/places-in-all'

/**
 * Fewest changes inside periods with which everyone can play exactly as long as everyone else: S − gcd(S, m · n) for S
 * players, n on the pitch and m periods of equal length.
 *
 * Why: think of each of the n places in each of the m periods as a row to be filled, and join a player to a row where it
 * plays some of it. Equal time means that in each group that hangs together there are as many players to a row as in the
 * whole, S / (m · n); the smallest group for which that comes out whole has S / gcd players, so there are at most gcd
 * groups. A group that hangs together has at least as many joints as its players and rows less one: in all at least
 * S + m · n − gcd spells, and m · n of them begin with a period. Filling the rows one after another, players in order,
 * reaches it. Where a keeper stays for a whole period, or spells have a least length, it may take more.
 */
export function equalTimeChanges(match: {
  readonly players: number
  readonly onPitch: number
  readonly periods: number
}): number {
  const { players, onPitch, periods } = match
  return players <= onPitch ? 0 : players - greatestCommon(players, periods * onPitch)
}

/** The same for a problem in which it can be asked: everyone there throughout and due the same. Null for any other. */
export function equalTimeChangesOf(problem: LineUpProblem): number | null {
  const { players, windows, hasStart } = problem
  const [first] = windows
  if (!first || !hasStart) return null
  const isFull = players.every(({ isThere }) => isThere.every(Boolean))
  const fair = fairLineUp(problem)
  const dues = players.map(({ owed }, player) => owed.playSeconds + (fair.play[player] ?? 0))
  const isEven = dues.every((due) => Math.abs(due - (dues[0] ?? 0)) < 1e-6)
  const onPitch = placesInAll(first.places)
  const isSteady = windows.every(({ places }) => placesInAll(places) === onPitch)
  const lengths = periodLengths(problem)
  const areAlike = lengths.every((length) => length === lengths[0])
  return isFull && isEven && isSteady && areAlike
    ? equalTimeChanges({ players: players.length, onPitch, periods: lengths.length })
    : null
}

function periodLengths({ windows }: LineUpProblem): readonly number[] {
  const lengths = new Map<number, number>()
  for (const { period, start, end } of windows) lengths.set(period, (lengths.get(period) ?? 0) + end - start)
  return [...lengths.values()]
}

export function greatestCommon(one: number, other: number): number {
  return other === 0 ? one : greatestCommon(other, one % other)
}
