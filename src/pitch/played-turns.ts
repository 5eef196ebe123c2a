import type { Seconds } from '#common/time'
import type { AreaEnding } from '#pitch/pitch-event'
import { isSameStations } from '#pitch/same-stations'
import type { SetAside } from '#pitch/set-aside'
import type { TimedTurn, TurnSource } from '#pitch/timed-turn'
import type { Station } from '#practice/turn'
import { isPresentThroughout, type JoinedPresence, joinPresence } from '#squad/joined-presence'
import type { PlayerId } from '#squad/player'
import type { PresenceLine } from '#squad/presence'

/** A stretch of a turn in which nobody changed place; half-open. */
export type PlayedPart = {
  readonly start: Seconds
  readonly end: Seconds
  /** Only who was there for all of it. */
  readonly stations: readonly Station[]
}

export type PlayedTurn = {
  /** What opened it, or said of it that it was played. */
  readonly eventId: string
  /** Place in the plan's list, from 0; of turns beyond the plan's, a fraction behind the last of their round. */
  readonly index: number
  /** Null: the plan does not know the turn. */
  readonly round: number | null
  readonly start: Seconds
  readonly end: Seconds
  readonly source: TurnSource
  /** In order, touching, together the whole turn; more than one where places changed during it. */
  readonly parts: readonly [PlayedPart, ...PlayedPart[]]
  readonly endings: readonly AreaEnding[]
}

/**
 * Turns cut where places changed or where somebody with a place came or left, with only those in places who were there:
 * each turn ended at that second and went on with the changed places. A turn in which nobody had a place is left out.
 */
export function playedTurns(
  turns: readonly (TimedTurn & { readonly end: Seconds })[],
  presence: readonly PresenceLine[],
): { readonly turns: readonly PlayedTurn[]; readonly setAside: readonly SetAside[] } {
  const joined = joinPresence(presence)
  const setAside: SetAside[] = []
  const played = turns.flatMap((turn): readonly PlayedTurn[] => {
    const parts = partsOf(turn, joined)
    const [first, ...others] = parts
    if (!first || parts.every(({ stations }) => seatedIn(stations).length === 0)) {
      setAside.push({ id: turn.eventId, why: 'nobodyThere' })
      return []
    }
    const { eventId, index, round, start, end, source, endings } = turn
    return [{ eventId, index, round, start, end, source, endings, parts: [first, ...others] }]
  })
  return { turns: played, setAside }
}

function partsOf(turn: TimedTurn & { readonly end: Seconds }, joined: JoinedPresence): readonly PlayedPart[] {
  const placings = placingsOf(turn)
  const placed = new Set(placings.flatMap(({ stations }) => seatedIn(stations)))
  const comings = [...placed].flatMap((id) => (joined.get(id) ?? []).flatMap(({ from, to }) => [from, to]))
  const cuts = [...placings.map(({ second }) => second), ...comings]
    .filter((second) => turn.start < second && second < turn.end)
    .sort((a, b) => a - b)
  const edges = [...new Set([turn.start, ...cuts, turn.end])]
  const parts: PlayedPart[] = []
  edges.slice(1).forEach((end, place) => {
    const start = edges[place] as Seconds
    const stations = placings.findLast(({ second }) => second <= start)?.stations ?? turn.stations
    const there = stations.map((station) => thereThroughout(station, { from: start, to: end }, joined))
    const last = parts.at(-1)
    if (last && isSameStations(last.stations, there)) parts[parts.length - 1] = { ...last, end }
    else parts.push({ start, end, stations: there })
  })
  return parts
}

/** Places as they were said, from which second on, in order; of two at one second the later. Nobody has two places. */
function placingsOf(
  turn: TimedTurn,
): readonly { readonly second: Seconds; readonly stations: readonly Station[] }[] {
  return [{ second: turn.start, stations: turn.stations }, ...turn.changes]
    .map(({ second, stations }) => ({ second, stations: onePlaceEach(stations) }))
    .sort((a, b) => a.second - b.second)
}

function onePlaceEach(stations: readonly Station[]): readonly Station[] {
  const seen = new Set<PlayerId>()
  const once = (playerIds: readonly PlayerId[]) =>
    playerIds.filter((id) => !seen.has(id) && seen.add(id) !== null)
  return stations.map(({ attack, defend, keep }) => ({
    attack: once(attack),
    defend: once(defend),
    keep: once(keep),
  }))
}

function thereThroughout(
  { attack, defend, keep }: Station,
  stretch: { readonly from: Seconds; readonly to: Seconds },
  joined: JoinedPresence,
): Station {
  const there = (playerIds: readonly PlayerId[]) =>
    playerIds.filter((id) => isPresentThroughout(joined, id, stretch))
  return { attack: there(attack), defend: there(defend), keep: there(keep) }
}

/** Everyone with a place. */
export function seatedIn(stations: readonly Station[]): readonly PlayerId[] {
  return stations.flatMap(({ attack, defend, keep }) => [...attack, ...defend, ...keep])
}
