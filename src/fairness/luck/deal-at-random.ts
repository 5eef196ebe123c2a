import type { Chance } from '#common/chance'
import { groupBy } from '#common/group-by'
import { type Draw, goalTurns, luckRoles, openPlaces, type PlaceTurns } from '#fairness/luck/draw'

/** Deals a draw again and again: each call writes the turns of every player and role (player × 4 + role) into `turns`. */
export function dealer(draw: Draw, chance: Chance): (turns: Float64Array) => void {
  const roles = luckRoles.length
  const blocks = draw.blocks.map((block) => ({
    keepers: block.keepers.length,
    able: Int32Array.from(block.able),
    turns: block.turns.map((turn) => {
      const { places, drawn } = manyAlikeLast(openPlaces(block, turn))
      return {
        goal: goalTurns(turn),
        players: Int32Array.from(turn.players),
        open: Int32Array.from(places.flat()),
        drawn,
      }
    }),
  }))
  const inGoal = new Uint8Array(draw.players.length)
  const free = new Int32Array(draw.players.length)

  return (turns) => {
    turns.fill(0)
    for (const block of blocks) {
      shuffle(block.able, { drawn: block.keepers, of: block.able.length, chance })
      for (let at = 0; at < block.keepers; at++) inGoal[block.able[at] as number] = 1
      for (const { goal, players, open, drawn } of block.turns) {
        let count = 0
        for (const player of players) {
          if (inGoal[player]) turns[player * roles + 2] = (turns[player * roles + 2] as number) + goal
          else free[count++] = player
        }
        shuffle(free, { drawn, of: count, chance })
        for (let at = 0; at < count; at++) {
          const player = free[at] as number
          for (let role = 0; role < roles; role++) {
            const to = player * roles + role
            turns[to] = (turns[to] as number) + (open[at * roles + role] as number)
          }
        }
      }
      for (let at = 0; at < block.keepers; at++) inGoal[block.able[at] as number] = 0
    }
  }
}

/** Once all others are dealt, those that are alike need no drawing: mostly the places to wait. */
function manyAlikeLast(places: readonly PlaceTurns[]) {
  const alike = groupBy(places, (place) => place.join())
  const inOrder = [...alike.values()].sort((a, b) => a.length - b.length)
  return { places: inOrder.flat(), drawn: places.length - (inOrder.at(-1)?.length ?? 0) }
}

/** Puts so many drawn at random of the first `of` in front, by Fisher and Yates. */
function shuffle(
  list: Int32Array,
  { drawn, of, chance }: { readonly drawn: number; readonly of: number; readonly chance: Chance },
): void {
  for (let at = 0; at < drawn; at++) {
    const other = at + Math.floor(chance() * (of - at))
    const held = list[at] as number
    list[at] = list[other] as number
    list[other] = held
  }
}
