import type { Seconds } from '#common/time'
import { laidTurns } from '#pitch/laid-turns'
import type { AreaEnding } from '#pitch/pitch-event'
import { type PitchTimes, secondAt } from '#pitch/pitch-times'
import type { PlanFrom } from '#pitch/plan-as-it-stands'
import type { DecidedTaps } from '#pitch/play-taps'
import type { SetAside } from '#pitch/set-aside'
import { type DoneEvent, type EventOf, eventsOf } from '#pitch/standing-events'
import type { PlannedTurn } from '#planning/practice-plan'
import type { Station } from '#practice/turn'

/** How it is known that a turn was played. */
export type TurnSource = 'tapped' | 'roundByRound' | 'asPlanned'

/** A turn and its time, places as they were tapped or planned. */
export type TimedTurn = {
  /** What opened it, or said of it that it was played. */
  readonly eventId: string
  /** Place in the plan's list, from 0. */
  readonly index: number
  /** Null: the plan does not know the turn. */
  readonly round: number | null
  readonly start: Seconds
  /** Null: it is being played. */
  readonly end: Seconds | null
  readonly source: TurnSource
  readonly stations: readonly Station[]
  readonly changes: readonly { readonly second: Seconds; readonly stations: readonly Station[] }[]
  readonly endings: readonly AreaEnding[]
}

export type TimedTurns = { readonly turns: readonly TimedTurn[]; readonly setAside: readonly SetAside[] }

/** What the times of turns are read from. */
export type TimingSetting = {
  readonly standing: readonly DoneEvent[]
  readonly taps: DecidedTaps
  readonly times: PitchTimes
  readonly planned: readonly PlannedTurn[]
  readonly history: readonly PlanFrom[]
}

/** All turns that were played, in order of time and not overlapping; the last may still be going on. */
export function timedTurns(setting: TimingSetting): TimedTurns {
  if (setting.times.beganAt === null) return { turns: [], setAside: [] }
  const setAside: SetAside[] = []
  const tapped = tappedTurns(setting, setAside)
  const laid = laidTurns(setting, tapped, setAside)
  const turns = [...tapped, ...laid].sort((a, b) => a.start - b.start || a.index - b.index)
  return { turns, setAside }
}

function tappedTurns(
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
    const cut = earliest(next, stop)
    const asLong = start + (planned[index]?.seconds ?? 1)
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
