import type { Situation } from '#exposure/column'
import { situationsAt } from '#exposure/situation'
import type { AreaShape } from '#practice/design'
import type { Station } from '#practice/turn'
import type { PlayerId } from '#squad/player'
import type { Random } from './random'
import type { Tally } from './tally'

/** What a coach looks at when calling the next turn. */
export type Call = {
  readonly areas: readonly AreaShape[]
  /** Present for the whole turn. */
  readonly present: readonly PlayerId[]
  /** Named for the round, as many as the areas have goals. */
  readonly keepers: readonly PlayerId[]
  /** What each player did in the turn before. */
  readonly before: ReadonlyMap<PlayerId, 'attack' | 'defend' | 'keep' | 'rest'>
  /** Turns in a row that each player has waited. */
  readonly waited: ReadonlyMap<PlayerId, number>
  /** Never on the side that has more players. */
  readonly neverOutnumbering: PlayerId | null
}

type Dealt = { readonly tally: Tally; readonly random: Random }

/** Seconds by which a coach misjudges, and by which it is easier to leave someone where it is. */
const guessSeconds = 40
const stayingSeconds = 45
/** How much the numbers weigh beside the roles. */
const numbersWeight = 1.3

/**
 * Seats a turn as a coach does who carries the season in mind: whoever has waited least waits, whoever is owed attack
 * attacks, and those owed the numbers in favour get them, give or take a guess.
 */
export function callTurn(call: Call, dealt: Dealt): readonly Station[] {
  const guess = () => (dealt.random() - 0.5) * 2 * guessSeconds
  const field = call.present.filter((playerId) => !call.keepers.includes(playerId))
  const attackSeats = call.areas.reduce((sum, area) => sum + area.attack, 0)
  const defendSeats = call.areas.reduce((sum, area) => sum + area.defend, 0)
  const playing = best(
    field,
    attackSeats + defendSeats,
    (playerId) => -restWish(call, dealt.tally, playerId) + guess(),
  )
  const attacking = best(
    playing,
    attackSeats,
    (playerId) => attackWish(call, dealt.tally, playerId) + guess(),
  )
  const defending = playing.filter((playerId) => !attacking.includes(playerId))
  const attackersIn = shareOut(call, 'attack', attacking, dealt)
  const defendersIn = shareOut(call, 'defend', defending, dealt)
  const keepers = [...call.keepers]
  return call.areas.map((area, index) => ({
    attack: attackersIn[index] ?? [],
    defend: defendersIn[index] ?? [],
    keep: keepers.splice(0, area.keep),
  }))
}

function restWish(call: Call, tally: Tally, playerId: PlayerId): number {
  const waited = call.waited.get(playerId) ?? 0
  if (waited >= 2) return Number.NEGATIVE_INFINITY
  return tally.of(playerId).rest - waited * 150
}

function attackWish(call: Call, tally: Tally, playerId: PlayerId): number {
  if (playerId === call.neverOutnumbering) {
    const open = { attack: openTo(call, 'attack'), defend: openTo(call, 'defend') }
    if (open.attack !== open.defend) return open.attack ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY
  }
  const before = call.before.get(playerId)
  const staying = before === 'attack' ? stayingSeconds : before === 'defend' ? -stayingSeconds : 0
  const owed = tally.of(playerId)
  return owed.attack - owed.defend + staying + numbersWeight * numbersFor(call) * owedNumbers(tally, playerId)
}

/** 1 where attackers mostly have more players, -1 where defenders do. */
function numbersFor(call: Call): number {
  return Math.sign(call.areas.reduce((sum, area) => sum + favourOf(area, 'attack') * area.attack, 0))
}

/** What is owed of having more players than the other side rather than fewer. */
function owedNumbers(tally: Tally, playerId: PlayerId): number {
  return tally.of(playerId).outnumbering - tally.of(playerId).outnumbered
}

/** Whether a side has a place anywhere without more players than the other. */
function openTo(call: Call, side: 'attack' | 'defend'): boolean {
  return call.areas.some((area) => area[side] > 0 && favourOf(area, side) < 1)
}

/** A side's players over the areas: the numbers in favour to whoever is owed them, the numbers against likewise. */
function shareOut(
  call: Call,
  side: 'attack' | 'defend',
  players: readonly PlayerId[],
  dealt: Dealt,
): readonly (readonly PlayerId[])[] {
  const order = call.areas
    .map((area, index) => ({ index, count: area[side], favour: favourOf(area, side) }))
    .toSorted((one, other) => other.favour - one.favour || one.index - other.index)
  const inFavour = order.reduce((sum, place) => sum + (place.favour > 0 ? place.count : 0), 0)
  const wish = (playerId: PlayerId) => owedNumbers(dealt.tally, playerId) + dealt.random() * guessSeconds
  const waiting = [...behind(best(players, players.length, wish), call.neverOutnumbering, inFavour)]
  const shared = new Map(order.map(({ index, count }) => [index, waiting.splice(0, count)]))
  return call.areas.map((_, index) => shared.get(index) ?? [])
}

/** The same order with one player moved behind the first `places`, where it stood among them. */
function behind(
  players: readonly PlayerId[],
  playerId: PlayerId | null,
  places: number,
): readonly PlayerId[] {
  if (playerId === null) return players
  const at = players.indexOf(playerId)
  if (at < 0 || at >= places) return players
  return players.toSpliced(at, 1).toSpliced(places, 0, playerId)
}

/** 1 where a side has more players than the other, -1 where it has fewer. */
function favourOf(area: AreaShape, side: 'attack' | 'defend'): number {
  const situation = situationsAt({ attackers: area.attack, defenders: area.defend })[side]
  return situation ? favour[situation] : 0
}

const favour = { outnumbering: 1, level: 0, outnumbered: -1 } as const satisfies Record<Situation, number>

/** The `count` players with the highest wish, highest first; ties stay in order. Each wish is asked for once. */
export function best(
  players: readonly PlayerId[],
  count: number,
  wish: (playerId: PlayerId) => number,
): readonly PlayerId[] {
  return players
    .map((playerId) => ({ playerId, wish: wish(playerId) }))
    .toSorted((one, other) => (one.wish === other.wish ? 0 : other.wish > one.wish ? 1 : -1))
    .slice(0, count)
    .map(({ playerId }) => playerId)
}
