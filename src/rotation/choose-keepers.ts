import { type KeeperChain, keeperChains, staysUntil } from '#rotation/keeper-chains'
import { mayServe } from '#rotation/limits'
import type { MayTake } from '#rotation/may-take'
import type { RotationProblem } from '#rotation/problem'
import { seatTurn } from '#rotation/seat-turn'

/** For each turn, who keeps where among the keepers that stay: player → place. */
export type KeeperDuties = readonly ReadonlyMap<number, number>[]

type Search = {
  readonly problem: RotationProblem
  readonly mayTake: MayTake
  readonly chains: readonly KeeperChain[]
  readonly duties: Map<number, number>[]
  /** Who would be asked first, for a duty of so many seconds from a step of a chain on. */
  readonly order: (
    players: readonly number[],
    duty: { readonly chain: number; readonly step: number; readonly seconds: number },
  ) => readonly number[]
  /** Called when a duty is given (1) or taken back (−1). */
  readonly onDuty: (player: number, seconds: number, sign: 1 | -1) => void
}

/**
 * Keepers for every round whose keepers stay, such that each of its turns can still be seated. Returns the duties, or
 * the round (from 0) in which there are none whatever is tried. Looks through every choice before it says so.
 */
export function chooseKeepers(
  problem: RotationProblem,
  mayTake: MayTake,
  preference: Pick<Search, 'order' | 'onDuty'>,
  rounds: readonly number[] = [...problem.rounds.keys()],
): { readonly duties: KeeperDuties } | { readonly impossibleRound: number } {
  const chains = keeperChains(problem)
  const search: Search = {
    problem,
    mayTake,
    chains,
    duties: problem.turns.map(() => new Map()),
    ...preference,
  }
  for (const round of rounds) {
    const own = chains.filter((chain) => chain.round === round)
    if (own.length > 0 && !fillChains(search, own, { chain: 0, step: 0 })) return { impossibleRound: round }
  }
  return { duties: search.duties }
}

/** Turns in which a player keeps goal by what is chosen already; looked up only where its turns are numbered. */
function dutyTurns({ problem, duties }: Search, player: number): number {
  return problem.players[player]?.mostTurns == null ? 0 : duties.filter((own) => own.has(player)).length
}

type Position = { readonly chain: number; readonly step: number }

function fillChains(search: Search, chains: readonly KeeperChain[], at: Position): boolean {
  const { problem, duties } = search
  const chain = chains[at.chain]
  if (!chain) return true
  if (at.step === chain.turns.length) return fillChains(search, chains, { chain: at.chain + 1, step: 0 })
  const turns = (player: number) =>
    chain.turns.slice(at.step, staysUntil(problem, chain, { player, from: at.step }))
  const secondsEach = problem.turns[chain.turns[at.step] as number]?.seconds ?? 0
  const players = [...problem.players.keys()].filter((player) => {
    const own = turns(player)
    return (
      own.length > 0 &&
      mayServe(problem.players[player], own, dutyTurns(search, player)) &&
      own.every((turn) => !duties[turn]?.has(player) && search.mayTake(turn, player, chain.place))
    )
  })
  const seconds = secondsEach * (chain.turns.length - at.step)
  const ordered = search.order(players, { chain: search.chains.indexOf(chain), step: at.step, seconds })
  for (const player of ordered) {
    const own = turns(player)
    for (const turn of own) duties[turn]?.set(player, chain.place)
    search.onDuty(player, secondsEach * own.length, 1)
    const canSeat = own.every((turn) => seatTurn(problem, search.mayTake, { turn, keepers: duties[turn] }))
    const next = { chain: at.chain, step: at.step + own.length }
    if (canSeat && fillChains(search, chains, next)) return true
    for (const turn of own) duties[turn]?.delete(player)
    search.onDuty(player, secondsEach * own.length, -1)
  }
  return false
}
