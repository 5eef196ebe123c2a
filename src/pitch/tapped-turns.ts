import type { Seconds } from '#common/time'
import { isForgotten } from '#pitch/length-of-practice'
import type { AreaEnding } from '#pitch/pitch-event'
import { secondAt } from '#pitch/pitch-times'
import type { DecidedTaps } from '#pitch/play-taps'
import type { SetAside } from '#pitch/set-aside'
import { type EventOf, eventsOf } from '#pitch/standing-events'
import type { TimedTurn, TimingSetting } from '#pitch/timed-turn'

/** The turns that were tapped one by one, in order of time and not overlapping; the last may still be going on. */
export function tappedTurns(
  { standing, taps, times, planned }: TimingSetting,
  setAside: SetAside[],
): readonly TimedTurn[] {
  const beganAt = times.beganAt as number
  const stop = times.endedAt === null ? null : secondAt(beganAt, times.endedAt)
  const ends = ofStart(eventsOf(standing, 'turnEnd'), taps, setAside)
  const changes = ofStart(eventsOf(standing, 'change'), taps, setAside)
  const overTaps = [...taps.roundsDone, ...(taps.asPlanned ? [taps.asPlanned] : [])]
  return taps.starts.flatMap((event, place): readonly TimedTurn[] => {
    const { turn: index, stations } = event.deed
    const start = secondAt(beganAt, event.at)
    const following = taps.starts[place + 1]
    const next = following ? secondAt(beganAt, following.at) : null
    const own = ends.get(event.id) ?? []
    const tappedEnd = own.map(({ at }) => secondAt(beganAt, at)).find((second) => second > start) ?? null
    const asLong = start + (planned[index]?.seconds ?? 1)
    // A turn that was left running when everybody went home lasted as planned.
    const cut = earliest(next, stop !== null && isForgotten(stop, asLong) ? asLong : stop)
    const round = planned[index]?.round ?? null
    const over = overTaps
      .filter(({ deed }) => deed.kind === 'asPlanned' || round === null || deed.round >= round)
      .map(({ at }) => secondAt(beganAt, at))
      .filter((second) => second > start)
      .reduce(earliest, next)
    // An end by a clock that says it was before the start, or none though play went on: as long as it was planned.
    const isOver = own.length > 0 || over !== null
    const whole = tappedEnd ?? (isOver ? (earliest(asLong, over) as number) : null)
    const end = earliest(whole, cut)
    if (end !== null && end <= start) {
      setAside.push({ id: event.id, why: 'noTime' })
      return []
    }
    for (const { id, deed } of own.slice(1)) {
      if (deed.endings.length === 0) setAside.push({ id, why: 'alreadyEnded' })
    }
    const changed = (changes.get(event.id) ?? []).flatMap(({ id, at, deed }) => {
      const second = Math.max(start, secondAt(beganAt, at))
      if (end === null || second < end) return [{ second, stations: deed.stations }]
      setAside.push({ id, why: 'alreadyEnded' })
      return []
    })
    return [
      {
        eventId: event.id,
        index,
        round,
        start,
        end,
        source: 'tapped',
        stations,
        changes: changed,
        endings: mergedEndings(own.map(({ deed }) => deed.endings)),
      },
    ]
  })
}

/** Events of turns by the start that stands; of a start that is not here, set aside. */
function ofStart<Event extends EventOf<'turnEnd'> | EventOf<'change'>>(
  events: readonly Event[],
  taps: DecidedTaps,
  setAside: SetAside[],
): ReadonlyMap<string, readonly Event[]> {
  const found = new Map<string, Event[]>()
  for (const event of events) {
    const start = taps.startOf.get(event.deed.start)
    if (start === undefined) setAside.push({ id: event.id, why: 'unknownTurn' })
    else found.set(start, [...(found.get(start) ?? []), event])
  }
  return found
}

/** How the turn ended in each area, as was said last: the time of its end is that of the first tap. */
function mergedEndings(said: readonly (readonly AreaEnding[])[]): readonly AreaEnding[] {
  const byArea = new Map(said.flat().map((ending) => [ending.station, ending]))
  return [...byArea.values()].sort((a, b) => a.station - b.station)
}

function earliest(one: Seconds | null, other: Seconds | null): Seconds | null {
  if (one === null) return other
  return other === null ? one : Math.min(one, other)
}
