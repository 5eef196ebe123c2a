/** How many places of each kind there are, and what each kind costs each player; null where it may not have it. */
export type WindowDeal = {
  readonly capacity: readonly number[]
  readonly costs: readonly (readonly (number | null)[])[]
}

/**
 * One place for every player, at the least cost in all; null where that cannot be. Players come in one by one, each by
 * the cheapest chain of moves that makes room: so every step leaves the least cost for those who are in.
 */
export function dealWindow({ capacity, costs }: WindowDeal): readonly number[] | null {
  const kinds = capacity.length
  const placeOf: number[] = []
  const left = [...capacity]
  for (const own of costs) {
    const chain = cheapestChain({ own, costs, placeOf, left, kinds })
    if (!chain) return null
    for (const { player, to } of chain.moves) placeOf[player] = to
    placeOf.push(chain.first)
    left[chain.last] = (left[chain.last] ?? 0) - 1
  }
  return placeOf
}

type Move = { readonly player: number; readonly to: number }

/** Bellman and Ford's shortest path over the kinds: from the newcomer to a kind with a place left. */
function cheapestChain(state: {
  readonly own: readonly (number | null)[]
  readonly costs: WindowDeal['costs']
  readonly placeOf: readonly number[]
  readonly left: readonly number[]
  readonly kinds: number
}): { readonly first: number; readonly last: number; readonly moves: readonly Move[] } | null {
  const { own, costs, placeOf, left, kinds } = state
  const cost = own.map((value) => value ?? Number.POSITIVE_INFINITY)
  const cameBy: (Move & { readonly from: number })[] = []
  for (let round = 1; round < kinds; round += 1) {
    for (const [player, from] of placeOf.entries()) {
      const stays = costs[player]?.[from] ?? 0
      for (let to = 0; to < kinds; to += 1) {
        const goes = costs[player]?.[to]
        if (to === from || goes === null || goes === undefined) continue
        const through = (cost[from] ?? Number.POSITIVE_INFINITY) + goes - stays
        if (through < (cost[to] ?? Number.POSITIVE_INFINITY) - 1e-9) {
          cost[to] = through
          cameBy[to] = { player, to, from }
        }
      }
    }
  }
  let last = -1
  for (let kind = 0; kind < kinds; kind += 1) {
    const isBetter = (cost[kind] ?? Number.POSITIVE_INFINITY) < (cost[last] ?? Number.POSITIVE_INFINITY)
    if ((left[kind] ?? 0) > 0 && isBetter) last = kind
  }
  if (last < 0) return null
  const moves: Move[] = []
  let first = last
  for (let came = cameBy[first]; came; came = cameBy[first]) {
    moves.push(came)
    first = came.from
  }
  return { first, last, moves }
}
