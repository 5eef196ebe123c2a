import type { Seconds } from '#common/time'
import { layTurns } from '#pitch/lay-back'
import type { AreaEnding } from '#pitch/pitch-event'
import { type PitchTimes, secondAt } from '#pitch/pitch-times'
import { firstOfRound } from '#pitch/plan-as-it-stands'
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

type Setting = {
  readonly standing: readonly DoneEvent[]
  readonly taps: DecidedTaps
  readonly times: PitchTimes
  readonly planned: readonly PlannedTurn[]
}

/** All turns that were played, in order of time and not overlapping; the last may still be going on. */
export function timedTurns(setting: Setting): TimedTurns {
  if (setting.times.beganAt === null) return { turns: [], setAside: [] }
  const setAside: SetAside[] = []
  const tapped = tappedTurns(setting, setAside)
  const laid = laidTurns(setting, tapped, setAside)
  const turns = [...tapped, ...laid].sort((a, b) => a.start - b.start || a.index - b.index)
  return { turns, setAside }
}

function tappedTurns(
  { standing, taps, times, planned }: Setting,
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
    own.slice(1).forEach(({ id }) => {
      setAside.push({ id, why: 'alreadyEnded' })
    })
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

/** How each area's turn ended as first said. */
function mergedEndings(said: readonly (readonly AreaEnding[])[]): readonly AreaEnding[] {
  const byArea = new Map<number, AreaEnding>()
  for (const ending of said.flat()) {
    const known = byArea.get(ending.station)
    if (!known || (known.endingId === null && ending.endingId !== null)) byArea.set(ending.station, ending)
  }
  return [...byArea.values()].sort((a, b) => a.station - b.station)
}

type Unlaid = {
  readonly eventId: string
  readonly index: number
  readonly round: number
  readonly turn: PlannedTurn
  readonly source: TurnSource
  /** It was over by then. */
  readonly by: Seconds
}

/** Turns that were tapped as a round or a whole plan, laid around those that were tapped one by one. */
function laidTurns(
  setting: Setting,
  tapped: readonly TimedTurn[],
  setAside: SetAside[],
): readonly TimedTurn[] {
  const fixed = tapped.map(({ index, start, end }) => ({
    index,
    start,
    end: end ?? Number.POSITIVE_INFINITY,
  }))
  const laid: TimedTurn[] = []
  for (const block of blocksOf(unlaidTurns(setting, tapped), fixed)) {
    const { by, source } = block[0] as Unlaid
    const before = [...fixed, ...laid.map(({ start, end }) => ({ start, end: end as number }))]
    const from = Math.min(by, Math.max(0, ...before.filter(({ start }) => start < by).map(({ end }) => end)))
    const times = layTurns(
      block.map(({ turn }) => turn),
      { from, to: by, at: source === 'asPlanned' ? 'start' : 'end' },
    )
    block.forEach(({ eventId, index, round, turn }, place) => {
      const { start, end } = times[place] as { start: Seconds; end: Seconds }
      if (start === end) setAside.push({ id: eventId, why: 'noTime' })
      else
        laid.push({
          eventId,
          index,
          round,
          start,
          end,
          source,
          stations: turn.stations,
          changes: [],
          endings: [],
        })
    })
  }
  return laid
}

function unlaidTurns(setting: Setting, tapped: readonly TimedTurn[]): readonly Unlaid[] {
  const { taps, times, planned } = setting
  const beganAt = times.beganAt as number
  const known = new Set(tapped.map(({ index }) => index))
  const isNew = (index: number) => !known.has(index) && known.add(index) !== null
  const stop = times.endedAt === null ? Number.POSITIVE_INFINITY : secondAt(beganAt, times.endedAt)
  const ofRounds = taps.roundsDone.flatMap(({ id, at, deed }) => {
    const first = firstOfRound(planned, deed.round) ?? planned.length + 1000 * (deed.round + 1)
    const by = secondAt(beganAt, at)
    return deed.turns.flatMap((turn, place): readonly Unlaid[] =>
      isNew(first + place)
        ? [
            {
              eventId: id,
              index: first + place,
              round: deed.round,
              turn,
              source: 'roundByRound',
              by: Math.min(by, stop),
            },
          ]
        : [],
    )
  })
  const done = new Set(taps.roundsDone.map(({ deed }) => deed.round))
  const { asPlanned } = taps
  const ofPlan = (asPlanned?.deed.turns ?? []).flatMap((turn, index): readonly Unlaid[] => {
    if (!asPlanned || done.has(turn.round) || !isNew(index)) return []
    const by = Math.min(secondAt(beganAt, asPlanned.at), stop)
    return [{ eventId: asPlanned.id, index, round: turn.round, turn, source: 'asPlanned', by }]
  })
  return [...ofRounds, ...ofPlan].sort((a, b) => a.index - b.index)
}

/**
 * Turns that share one stretch of time, in order of time. A turn was over when its round was tapped, before any later
 * turn that was timed, and before a later turn's own block.
 */
function blocksOf(
  unlaid: readonly Unlaid[],
  fixed: readonly { readonly index: number; readonly start: Seconds }[],
): readonly (readonly Unlaid[])[] {
  const blocks: Unlaid[][] = []
  let limit = Number.POSITIVE_INFINITY
  for (const turn of [...unlaid].reverse()) {
    const later = fixed.filter(({ index }) => index > turn.index).map(({ start }) => start)
    limit = Math.min(limit, turn.by, ...later)
    const block = blocks[0]
    if (block?.[0]?.by === limit && block[0].source === turn.source) block.unshift({ ...turn, by: limit })
    else blocks.unshift([{ ...turn, by: limit }])
  }
  return blocks
}

function earliest(one: Seconds | null, other: Seconds | null): Seconds | null {
  if (one === null) return other
  return other === null ? one : Math.min(one, other)
}
