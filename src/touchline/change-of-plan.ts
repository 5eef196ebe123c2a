import type { LinePlaces } from '#match/format/match-format'
import { placesInAll } from '#match/format/places-in-all'
import { type Line, lines } from '#match/match'
import type { PlayerId } from '#squad/player'
import type { PlacedPlayer } from '#touchline/match-deed'
import type { PlannedSet } from '#touchline/planned-sets'

/** A change as it is called: OFF, ON, and who moves to another line. */
export type CalledPlayers = {
  readonly off: readonly PlayerId[]
  readonly on: readonly PlacedPlayer[]
  readonly moved: readonly PlacedPlayer[]
  /** To come on by the plan, and not there or not able. */
  readonly missing: readonly PlayerId[]
  /** Who is on after it. */
  readonly after: readonly PlacedPlayer[]
}

/**
 * What a set of the plan changes for those who are on now. After changes that nobody planned, the plan's difference is
 * made and no more. Where somebody who should come on is not there, one who should go off stays on: a place is left empty
 * only where nobody can fill it.
 */
export function changeOfPlan(
  set: Pick<PlannedSet, 'on' | 'before'>,
  now: {
    readonly on: readonly PlacedPlayer[]
    readonly places: LinePlaces
    readonly isAble: (id: PlayerId) => boolean
    readonly keeps: (id: PlayerId) => boolean
  },
): CalledPlayers {
  const target = set.before ? withDifference(now.on, set.before, set.on) : set.on
  const able = target.filter(({ playerId }) => now.isAble(playerId))
  const missing = target.filter(({ playerId }) => !now.isAble(playerId)).map(({ playerId }) => playerId)
  const planned = new Set(set.on.map(({ playerId }) => playerId))
  const leaving = now.on.filter(({ playerId }) => !able.some((one) => one.playerId === playerId))
  const after = withinPlaces(withStaying(able, leaving, now), planned, now)
  return { ...callOf(now.on, after), missing }
}

/** The call that brings those who are on to those who are to be. */
export function callOf(
  on: readonly PlacedPlayer[],
  after: readonly PlacedPlayer[],
): Omit<CalledPlayers, 'missing'> {
  const before = new Map(on.map(({ playerId, line }) => [playerId, line]))
  const stays = new Set(after.map(({ playerId }) => playerId))
  return {
    off: on.filter(({ playerId }) => !stays.has(playerId)).map(({ playerId }) => playerId),
    on: after.filter(({ playerId }) => !before.has(playerId)),
    moved: after.filter(({ playerId, line }) => before.has(playerId) && before.get(playerId) !== line),
    after,
  }
}

/** Those whom a tap puts on, as far as there are places: what comes from elsewhere may name more, or two in goal. */
export function withinFormat(placed: readonly PlacedPlayer[], places: LinePlaces): readonly PlacedPlayer[] {
  const once = [...new Map(placed.map((one) => [one.playerId, one])).values()]
  return withinPlaces(withOneKeeper(once, places), new Set(), { places })
}

function withDifference(
  on: readonly PlacedPlayer[],
  before: readonly PlacedPlayer[],
  after: readonly PlacedPlayer[],
): readonly PlacedPlayer[] {
  const lineBefore = new Map(before.map(({ playerId, line }) => [playerId, line]))
  const lineAfter = new Map(after.map(({ playerId, line }) => [playerId, line]))
  const isOn = new Set(on.map(({ playerId }) => playerId))
  const staying = on.flatMap(({ playerId, line }): PlacedPlayer[] => {
    const [old, next] = [lineBefore.get(playerId), lineAfter.get(playerId)]
    if (old && !next) return []
    return [{ playerId, line: next && next !== old ? next : line }]
  })
  const coming = after.filter(({ playerId }) => !lineBefore.has(playerId) && !isOn.has(playerId))
  return [...staying, ...coming]
}

type Now = Parameters<typeof changeOfPlan>[1]

/** Places that nobody comes on for go to those who would leave: in their own line where it has room. */
function withStaying(
  able: readonly PlacedPlayer[],
  leaving: readonly PlacedPlayer[],
  now: Now,
): readonly PlacedPlayer[] {
  const all = [...able]
  const candidates = leaving.filter(({ playerId }) => now.isAble(playerId))
  while (candidates.length > 0 && all.length < placesInAll(now.places)) {
    const room = lines.filter((line) => roomIn(line, all, now.places) > 0)
    const hasRoom = (placed: PlacedPlayer) => room.includes(placed.line)
    const keeperFirst =
      room[0] === 'keeper' ? candidates.find(({ playerId }) => now.keeps(playerId)) : undefined
    const stays = keeperFirst ?? candidates.find(hasRoom) ?? candidates[0]
    if (!stays) break
    const line: Line = keeperFirst
      ? 'keeper'
      : hasRoom(stays)
        ? stays.line
        : (room.find((one) => one !== 'keeper') ?? stays.line)
    all.push({ playerId: stays.playerId, line })
    candidates.splice(candidates.indexOf(stays), 1)
  }
  return withOneKeeper(all, now.places)
}

/** More than there are places for: whoever the plan does not name goes first, then the last to come; goal never. */
function withinPlaces(
  placed: readonly PlacedPlayer[],
  planned: ReadonlySet<PlayerId>,
  { places }: Pick<Now, 'places'>,
): readonly PlacedPlayer[] {
  const kept = [...placed]
  while (kept.length > placesInAll(places)) {
    const unplanned = kept.findLastIndex(({ playerId, line }) => line !== 'keeper' && !planned.has(playerId))
    const goes = unplanned >= 0 ? unplanned : kept.findLastIndex(({ line }) => line !== 'keeper')
    if (goes < 0) break
    kept.splice(goes, 1)
  }
  return kept
}

/** Of two in goal the one who came last keeps it; the other goes where there is room. */
function withOneKeeper(placed: readonly PlacedPlayer[], places: LinePlaces): readonly PlacedPlayer[] {
  const keeper = placed.findLastIndex(({ line }) => line === 'keeper')
  return placed.map((one, index): PlacedPlayer => {
    if (one.line !== 'keeper' || index === keeper) return one
    const room = lines.find((line) => line !== 'keeper' && roomIn(line, placed, places) > 0)
    return { ...one, line: room ?? 'middle' }
  })
}

function roomIn(line: Line, placed: readonly PlacedPlayer[], places: LinePlaces): number {
  return places[line] - placed.filter((one) => one.line === line).length
}
