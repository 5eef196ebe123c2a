import { type KeeperChain, keeperChains, staysUntil } from '#rotation/keeper-chains'
import { mayServe } from '#rotation/limits'
import type { MayTake } from '#rotation/may-take'
import type { RotationProblem } from '#rotation/problem'

type Duty = { readonly seconds: number; readonly round: number; readonly able: readonly number[] }

/**
 * Who should begin each chain of keepers who stay, so that what each keeps comes near to what it is owed: the longest
 * duties are given first, then single changes and swaps are made as long as they help. One entry a chain; −1: nobody
 * can.
 */
export function balanceDuties(
  problem: RotationProblem,
  mayTake: MayTake,
  owedKeeping: readonly number[],
): readonly number[] {
  const duties = keeperChains(problem).map((chain) => dutyOf(problem, mayTake, chain))
  const roster = new DutyRoster(duties, owedKeeping)
  const seconds = (duty: number) => duties[duty]?.seconds ?? 0
  for (const duty of [...duties.keys()].sort((a, b) => seconds(b) - seconds(a) || a - b))
    roster.assign(duty, roster.mostOwed(duty))
  for (let round = 0; round < mostRounds && improveOnce(roster, duties); round += 1);
  return roster.keepers
}

const mostRounds = 50

function improveOnce(roster: DutyRoster, duties: readonly Duty[]): boolean {
  let hasImproved = false
  for (const [duty, { able }] of duties.entries()) {
    for (const player of able) hasImproved = roster.changeIfBetter(duty, player) || hasImproved
    for (let other = duty + 1; other < duties.length; other += 1)
      hasImproved = roster.swapIfBetter(duty, other) || hasImproved
  }
  return hasImproved
}

/** Who has which duty, and what each player is still owed of keeping. */
class DutyRoster {
  readonly keepers: number[]
  readonly #left: number[]

  constructor(
    readonly duties: readonly Duty[],
    owedKeeping: readonly number[],
  ) {
    this.keepers = duties.map(() => -1)
    this.#left = [...owedKeeping]
  }

  assign(duty: number, player: number): void {
    const before = this.keepers[duty] ?? -1
    if (before >= 0) this.#left[before] = this.#owed(before) + this.#seconds(duty)
    this.keepers[duty] = player
    if (player >= 0) this.#left[player] = this.#owed(player) - this.#seconds(duty)
  }

  mostOwed(duty: number): number {
    const free = (this.duties[duty]?.able ?? []).filter((player) => this.#isFree(duty, player))
    return free.reduce(
      (best, player) => (best < 0 || this.#owed(player) > this.#owed(best) ? player : best),
      -1,
    )
  }

  changeIfBetter(duty: number, player: number): boolean {
    const now = this.keepers[duty] ?? -1
    if (now < 0 || player === now || !this.#isFree(duty, player)) return false
    // Moving `seconds` from one to the other changes the sum of squares by twice this.
    const seconds = this.#seconds(duty)
    if (seconds * (this.#owed(now) - this.#owed(player) + seconds) >= -hair) return false
    this.assign(duty, player)
    return true
  }

  swapIfBetter(duty: number, other: number): boolean {
    const [one = -1, two = -1] = [this.keepers[duty], this.keepers[other]]
    const shift = this.#seconds(duty) - this.#seconds(other)
    if (one < 0 || two < 0 || one === two || shift === 0) return false
    if (!this.#isFree(duty, two, other) || !this.#isFree(other, one, duty)) return false
    if (shift * (this.#owed(one) - this.#owed(two) + shift) >= -hair) return false
    this.assign(duty, two)
    this.assign(other, one)
    return true
  }

  #owed(player: number): number {
    return this.#left[player] ?? 0
  }

  #seconds(duty: number): number {
    return this.duties[duty]?.seconds ?? 0
  }

  /** Able, and without another duty in the same round; `but`: a duty that does not count. */
  #isFree(duty: number, player: number, but = -1): boolean {
    const own = this.duties[duty]
    if (!own?.able.includes(player)) return false
    return this.duties.every(
      (other, index) =>
        index === duty || index === but || other.round !== own.round || this.keepers[index] !== player,
    )
  }
}

const hair = 1e-6

function dutyOf(problem: RotationProblem, mayTake: MayTake, chain: KeeperChain): Duty {
  const able = [...problem.players.keys()].filter((player) => {
    const turns = chain.turns.slice(0, staysUntil(problem, chain, { player, from: 0 }))
    return (
      turns.length > 0 &&
      mayServe(problem.players[player], turns) &&
      turns.every((turn) => mayTake(turn, player, chain.place))
    )
  })
  const seconds = chain.turns.reduce((sum, turn) => sum + (problem.turns[turn]?.seconds ?? 0), 0)
  return { seconds, round: chain.round, able }
}
