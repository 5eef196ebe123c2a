import { seatPlace } from '#rotation/place'
import type { RotationProblem } from '#rotation/problem'

/** The turns of one round in which one station has a keeper seat, where keepers stay: one after another. */
export type KeeperChain = {
  readonly round: number
  readonly place: number
  readonly turns: readonly number[]
}

export function keeperChains(problem: RotationProblem): readonly KeeperChain[] {
  const chains = new Map<string, { round: number; place: number; turns: number[] }>()
  problem.turns.forEach(({ round, stations }, turn) => {
    if (!problem.rounds[round]?.keepersStay) return
    stations.forEach((seats, station) => {
      if (seats.keep === 0) return
      const key = `${round} ${station}`
      const chain = chains.get(key) ?? { round, place: seatPlace(station, 'keep'), turns: [] }
      chain.turns.push(turn)
      chains.set(key, chain)
    })
  })
  return [...chains.values()]
}

/** How far a keeper stays who begins at a step of a chain: the first step at which it has gone, or the chain's end. */
export function staysUntil(
  problem: RotationProblem,
  chain: KeeperChain,
  duty: { readonly player: number; readonly from: number },
): number {
  let step = duty.from
  while (step < chain.turns.length && problem.players[duty.player]?.present[chain.turns[step] as number])
    step += 1
  return step
}
