import type { PlayerId } from '#squad/player'

/** Roles as the columns of a draw, in this order everywhere in it. */
export const luckRoles = ['attack', 'defend', 'keep', 'rest'] as const
export type LuckRole = (typeof luckRoles)[number]

/** Turns that a place gives in each role; a free game gives two, one for each half. */
export type PlaceTurns = readonly [attack: number, defend: number, keep: number, rest: number]

/** A turn whose places may be dealt out anew: who was there, and beside each what its place gave. Players as places in the draw's list. */
export type DrawnTurn = {
  readonly players: readonly number[]
  readonly places: readonly PlaceTurns[]
}

/** Turns one after another with the same keepers: whoever is drawn to keep goal stays for all of them. */
export type DrawnBlock = {
  readonly keepers: readonly number[]
  /** Who could be drawn to keep: there for all of its turns and able, its keepers always among them. */
  readonly able: readonly number[]
  readonly turns: readonly DrawnTurn[]
}

/** Turns as they were written, in the form in which a fair draw would have dealt them. */
export type Draw = {
  readonly players: readonly PlayerId[]
  readonly blocks: readonly DrawnBlock[]
  /** Turns dealt anew, and those left as they were: places changed during them, or keepers between the halves of a game. */
  readonly turns: number
  readonly leftOut: number
}

/** The chance of a player to be drawn to keep goal through a block. */
export function keepChance(block: DrawnBlock, player: number): number {
  return block.able.includes(player) ? block.keepers.length / block.able.length : 0
}

/** Turns that a place in goal gives in a turn; 0: it has none. */
export function goalTurns({ places }: DrawnTurn): number {
  return places.find(([, , keep]) => keep > 0)?.[2] ?? 0
}

/** What the places of a turn give that are not in goal. */
export function openPlaces(block: DrawnBlock, turn: DrawnTurn): readonly PlaceTurns[] {
  return turn.places.filter((_, at) => !block.keepers.includes(turn.players[at] ?? -1))
}
