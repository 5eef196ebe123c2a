import { type KeeperChain, keeperChains, staysUntil } from '#rotation/keeper-chains'
import type { MayTake } from '#rotation/may-take'
import type { RotationProblem } from '#rotation/problem'

/** One player keeping through some turns of a chain of keepers who stay, from a step of the chain to another. */
export type KeeperDuty = {
  readonly chain: number
  readonly player: number
  readonly place: number
  readonly from: number
  /** The step after its last: the chain's length, or where the keeper has gone. */
  readonly until: number
  readonly turns: readonly number[]
}

export type DutyTable = {
  readonly chains: readonly KeeperChain[]
  readonly duties: readonly KeeperDuty[]
}

/** Every duty that any player may have. Nobody takes over but at steps where somebody may have gone. */
export function keeperDuties(problem: RotationProblem, mayTake: MayTake): DutyTable {
  const chains = keeperChains(problem)
  const duties = chains.flatMap((chain, index) => dutiesOfChain(problem, mayTake, { chain, index }))
  return { chains, duties }
}

function dutiesOfChain(
  problem: RotationProblem,
  mayTake: MayTake,
  { chain, index }: { readonly chain: KeeperChain; readonly index: number },
): readonly KeeperDuty[] {
  const duties: KeeperDuty[] = []
  const isOpen = chain.turns.map((_, step) => step === 0)
  for (const from of chain.turns.keys()) {
    if (!isOpen[from]) continue
    for (const player of problem.players.keys()) {
      const until = staysUntil(problem, chain, { player, from })
      const turns = chain.turns.slice(from, until)
      if (turns.length === 0 || !turns.every((turn) => mayTake(turn, player, chain.place))) continue
      duties.push({ chain: index, player, place: chain.place, from, until, turns })
      if (until < chain.turns.length) isOpen[until] = true
    }
  }
  return duties
}
