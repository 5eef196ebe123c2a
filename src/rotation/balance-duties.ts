import { type KeeperChain, keeperChains, staysUntil } from '#rotation/keeper-chains'
import type { MayTake } from '#rotation/may-take'
import type { RotationProblem } from '#rotation/problem'

type Duty = { readonly seconds: number; readonly round: number; readonly able: readonly number[] }

/**
 * Who should begin each chain of keepers who stay, so that what each keeps comes near to what it is owed: the longest
 * duties are given first, then single changes and swaps are made as long as they help. One entry a chain; −1: nobody can.
 */
export function balanceDuties(
  problem: RotationProblem,
  mayTake: MayTake,
  owedKeeping: readonly number[],
): readonly number[] {
  const duties = keeperChains(problem).map((chain) => dutyOf(problem, mayTake, chain))
  const left = [...owedKeeping]
  const keepers = duties.map(() => -1)
  const isFree = (duty: number, player: number, but = -1) =>
    duties[duty]?.able.includes(player) &&
    duties.every(
      (other, index) =>
        index === duty || index === but || other.round !== duties[duty]?.round || keepers[index] !== player,
    )
  const secondsOf = (duty: number) => duties[duty]?.seconds ?? 0
  const assign = (duty: number, player: number) => {
    const before = keepers[duty] ?? -1
    if (before >= 0) left[before] = (left[before] ?? 0) + secondsOf(duty)
    keepers[duty] = player
    if (player >= 0) left[player] = (left[player] ?? 0) - secondsOf(duty)
  }
  const most = (duty: number) =>
    (duties[duty]?.able ?? [])
      .filter((player) => isFree(duty, player))
      .reduce((best, player) => (best < 0 || (left[player] ?? 0) > (left[best] ?? 0) ? player : best), -1)
  const longestFirst = [...duties.keys()].sort((a, b) => secondsOf(b) - secondsOf(a) || a - b)
  for (const duty of longestFirst) assign(duty, most(duty))
  for (let round = 0; round < 50 && improve(); round += 1);
  return keepers

  function improve(): boolean {
    let hasImproved = false
    for (const [duty, { able, seconds }] of duties.entries()) {
      const own = keepers[duty] ?? -1
      if (own < 0) continue
      for (const player of able) {
        if (player === keepers[duty] || !isFree(duty, player)) continue
        const now = keepers[duty] ?? own
        // Moving `seconds` from one to the other changes the sum of squares by twice this.
        if (seconds * ((left[now] ?? 0) - (left[player] ?? 0) + seconds) < -1e-6) {
          assign(duty, player)
          hasImproved = true
        }
      }
      for (let other = duty + 1; other < duties.length; other += 1)
        hasImproved = swapIfBetter(duty, other) || hasImproved
    }
    return hasImproved
  }

  function swapIfBetter(duty: number, other: number): boolean {
    const [one = -1, two = -1] = [keepers[duty], keepers[other]]
    const shift = secondsOf(duty) - secondsOf(other)
    if (one < 0 || two < 0 || one === two || shift === 0) return false
    if (!isFree(duty, two, other) || !isFree(other, one, duty)) return false
    if (shift * ((left[one] ?? 0) - (left[two] ?? 0) + shift) >= -1e-6) return false
    assign(duty, two)
    assign(other, one)
    return true
  }
}

function dutyOf(problem: RotationProblem, mayTake: MayTake, chain: KeeperChain): Duty {
  const able = [...problem.players.keys()].filter((player) => {
    const turns = chain.turns.slice(0, staysUntil(problem, chain, { player, from: 0 }))
    return turns.length > 0 && turns.every((turn) => mayTake(turn, player, chain.place))
  })
  const seconds = chain.turns.reduce((sum, turn) => sum + (problem.turns[turn]?.seconds ?? 0), 0)
  return { seconds, round: chain.round, able }
}
