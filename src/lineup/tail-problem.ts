import type { Seconds } from '#common/time'
import type { MatchLock } from '#lineup/match-plan'
import { placesFor } from '#lineup/places-for'
import type {
  FixedPlace,
  LineUpPlayer,
  LineUpProblem,
  LineUpRules,
  LineUpWindow,
  Owed,
  RunningSpell,
} from '#lineup/problem'
import { secondsThere } from '#lineup/seconds-there'
import type { FieldLine, LineWishes } from '#match/format/line-wish'
import type { LinePlaces } from '#match/format/match-format'
import { type Line, lines } from '#match/match'
import type { PlayerId } from '#squad/player'

/** A player for whom the rest of a match is planned; seconds of the plan. */
export type TailPlayer = {
  readonly id: PlayerId
  readonly keeps: boolean
  /** There, and able to play, from here on. */
  readonly from: Seconds
  /** Null: to the end. */
  readonly to: Seconds | null
  /** With what was due and what was had of this match so far in it. */
  readonly owed: Owed
  /** Still promised. */
  readonly leastSeconds: Seconds
  /** Still allowed; null: no limit. */
  readonly mostSeconds: Seconds | null
  readonly wishes: LineWishes
  readonly metSeconds: Readonly<Record<FieldLine, Seconds>>
  readonly running: RunningSpell
}

/** Time of the rest of a match in which nobody changes places. `held`: who is on in it already, or by a call. */
export type TailWindow = LineUpWindow & {
  readonly held: readonly { readonly id: PlayerId; readonly place: Line | 'off' }[]
}

export type Tail = {
  readonly windows: readonly TailWindow[]
  readonly players: readonly TailPlayer[]
  /** With what was used of them already taken off. */
  readonly rules: LineUpRules
  readonly apart: readonly (readonly [PlayerId, PlayerId])[]
  readonly together: readonly (readonly [PlayerId, PlayerId])[]
  readonly locks: readonly MatchLock[]
  /** Nothing was played yet. */
  readonly hasStart: boolean
}

/**
 * The rest of a match as a problem like any other. Fewer players than places: fewer places, the keeper's last to go.
 * What is held, because it stands so or was called, comes before what a coach locked earlier.
 */
export function tailProblem(tail: Tail): LineUpProblem {
  const placeOf = new Map(tail.players.map(({ id }, index) => [id, index]))
  const windows = tail.windows.map((window): LineUpWindow => {
    const { period, start, end, places } = window
    const there = tail.players.filter((player) => isThereFor(player, window)).length
    return { period, start, end, places: placesFor(places, there) }
  })
  const pairs = (given: Tail['apart']) =>
    given.flatMap(([one, other]): [number, number][] => {
      const [first, second] = [placeOf.get(one), placeOf.get(other)]
      return first === undefined || second === undefined ? [] : [[first, second]]
    })
  const held = tail.windows.flatMap((window, index) => heldIn(window, index, placeOf))
  const isHeld = new Set(held.map(({ window }) => window))
  const locked = tail.windows.flatMap((window, index) =>
    isHeld.has(index) ? [] : lockedIn(tail, window, index, placeOf),
  )
  return {
    windows,
    players: tail.players.map((player) => playerOf(player, tail.windows)),
    rules: tail.rules,
    apart: pairs(tail.apart),
    together: pairs(tail.together),
    fixed: [...held, ...locked],
    hasStart: tail.hasStart,
  }
}

/** Places as they are taken now, those that are free added to the lines that lack most; in goal first. */
export function placesAsTaken(on: readonly { readonly line: Line }[], places: LinePlaces): LinePlaces {
  const taken: Record<Line, number> = { keeper: 0, back: 0, middle: 0, forward: 0 }
  for (const { line } of on) taken[line] += 1
  const total = lines.reduce((sum, line) => sum + places[line], 0)
  const lack = (line: Line) => places[line] - taken[line]
  for (let count = on.length; count < total; count += 1) {
    const line =
      lack('keeper') > 0
        ? 'keeper'
        : lines.reduce((most, one) => (lack(one) > lack(most) ? one : most), 'back')
    taken[line] += 1
  }
  if (lack('keeper') > 0) {
    // Nobody is in goal, and all places are taken: one of the line that has most too many goes there.
    const most = lines.reduce((one, line) => (lack(line) < lack(one) ? line : one), 'back')
    taken[most] -= 1
    taken.keeper += 1
  }
  return taken
}

function isThereFor({ from, to }: TailPlayer, { start, end }: LineUpWindow): boolean {
  return from <= start && (to === null || end <= to)
}

function heldIn(window: TailWindow, index: number, placeOf: ReadonlyMap<PlayerId, number>): FixedPlace[] {
  return window.held.flatMap(({ id, place }) => {
    const player = placeOf.get(id)
    return player === undefined ? [] : [{ player, window: index, place }]
  })
}

function lockedIn(
  { locks, players }: Tail,
  window: TailWindow,
  index: number,
  placeOf: ReadonlyMap<PlayerId, number>,
): FixedPlace[] {
  return locks.flatMap(({ playerId, start, end, place }) => {
    const at = placeOf.get(playerId)
    const player = at === undefined ? undefined : players[at]
    const isNow = start < window.end && window.start < end
    const canBe = player && (isThereFor(player, window) || place === 'off')
    return at !== undefined && isNow && canBe ? [{ player: at, window: index, place }] : []
  })
}

function playerOf(player: TailPlayer, windows: readonly LineUpWindow[]): LineUpPlayer {
  const { id, keeps, owed, leastSeconds, mostSeconds, wishes, metSeconds, running } = player
  const isThere = windows.map((window) => isThereFor(player, window))
  const there = secondsThere({ isThere }, windows)
  return {
    ...{ id, keeps, owed, wishes, metSeconds, running, isThere, mostSeconds },
    leastSeconds: Math.max(0, Math.min(leastSeconds, there, mostSeconds ?? there)),
  }
}
