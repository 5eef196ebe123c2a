import type { Seconds } from '#common/time'
import { layTurns } from '#pitch/lay-back'
import { secondAt } from '#pitch/pitch-times'
import { earliestAfterPlans, newPlacesOf, placesDuring } from '#pitch/places-in-time'
import { firstOfRound, plannedLength } from '#pitch/plan-as-it-stands'
import type { SetAside } from '#pitch/set-aside'
import type { TimedTurn, TimingSetting } from '#pitch/timed-turn'
import type { PlannedTurn } from '#planning/practice-plan'

type UntimedTurn = { readonly eventId: string; readonly index: number; readonly turn: PlannedTurn }

/** Turns that follow each other and were over by a second. */
type Run = { readonly by: Seconds; readonly turns: readonly UntimedTurn[] }

/** What has its time already; an open end has none. */
type Anchor = { readonly index: number; readonly start: Seconds; readonly end: Seconds }

/** Turns that were tapped as a whole round or a whole plan, laid around those that were tapped one by one. */
export function laidTurns(
  setting: TimingSetting,
  tapped: readonly TimedTurn[],
  setAside: SetAside[],
): readonly TimedTurn[] {
  const anchors: Anchor[] = tapped.map(({ index, start, end }) => ({
    index,
    start,
    end: end ?? Number.POSITIVE_INFINITY,
  }))
  const lay = (runs: readonly Run[], source: 'roundByRound' | 'asPlanned') =>
    runs.flatMap((run) => layRun(run, { source, anchors, setAside, setting }))
  const ofRounds = lay(runsOfRounds(setting, anchors), 'roundByRound')
  return [...ofRounds, ...lay(runsOfPlan(setting, anchors), 'asPlanned')]
}

function layRun(
  { by, turns }: Run,
  at: {
    readonly source: 'roundByRound' | 'asPlanned'
    readonly anchors: Anchor[]
    readonly setAside: SetAside[]
    readonly setting: TimingSetting
  },
): readonly TimedTurn[] {
  const before = at.anchors.filter(({ start }) => start < by).map(({ end }) => end)
  const planned = turns.map(({ turn }) => turn)
  const free = Math.min(by, Math.max(0, ...before))
  const { history, times } = at.setting
  const plans = newPlacesOf(turns, { history, beganAt: times.beganAt as number, by })
  const laid = layTurns(
    planned,
    at.source === 'asPlanned'
      ? { from: free, to: by, at: 'start' }
      : {
          from: earliestAfterPlans(plans, { from: free, by, planned: plannedLength(planned) }),
          to: by,
          at: 'end',
        },
  )
  return turns.flatMap((own, place): readonly TimedTurn[] => {
    const { eventId, index, turn } = own
    const { start, end } = laid[place] as { start: Seconds; end: Seconds }
    if (start === end) {
      at.setAside.push({ id: eventId, why: 'noTime' })
      return []
    }
    at.anchors.push({ index, start, end })
    const places = placesDuring(own, { start, end }, plans)
    return [{ eventId, index, round: turn.round, start, end, source: at.source, ...places, endings: [] }]
  })
}

/**
 * The rounds that were tapped, in order of time, each without its turns that were tapped one by one. A round that was
 * tapped after a later one, too soon after it to have been played since, was played before that one.
 */
function runsOfRounds({ taps, times, planned }: TimingSetting, anchors: readonly Anchor[]): readonly Run[] {
  const beganAt = times.beganAt as number
  const stop = times.endedAt === null ? Number.POSITIVE_INFINITY : secondAt(beganAt, times.endedAt)
  const runs = taps.roundsDone.flatMap(({ id, at, deed }) => {
    const indexOf = placesOfRound(planned, deed.round)
    const turns = deed.turns.map((turn, place) => ({ eventId: id, index: indexOf(place), turn }))
    const own = anchors.filter(({ index }) => indexOf(0) <= index && index <= indexOf(deed.turns.length - 1))
    return splitAround(turns, own).map((part) => {
      const by = Math.min(secondAt(beganAt, at), stop, ...startsAfter(own, part))
      return { by: beforeLater(by, part, anchors), turns: part }
    })
  })
  const inTime = [...runs].sort((a, b) => a.by - b.by || firstIndex(a) - firstIndex(b))
  const joined: Run[] = []
  for (const run of inTime) {
    const last = joined.at(-1)
    if (last && firstIndex(run) < firstIndex(last) && isTooSoon(run.by - last.by, run.turns)) {
      joined[joined.length - 1] = { ...last, turns: inPlaces([...last.turns, ...run.turns]) }
    } else {
      joined.push(run)
    }
  }
  return joined
}

/** What a whole plan says of turns that nothing else was tapped of, between those that something was. */
function runsOfPlan({ taps, times }: TimingSetting, anchors: readonly Anchor[]): readonly Run[] {
  const { asPlanned } = taps
  if (!asPlanned) return []
  const beganAt = times.beganAt as number
  const done = new Set(taps.roundsDone.map(({ deed }) => deed.round))
  const turns = asPlanned.deed.turns
    .map((turn, index) => ({ eventId: asPlanned.id, index, turn }))
    .filter(({ turn }) => !done.has(turn.round))
  const stop = times.endedAt ?? asPlanned.at
  return splitAround(turns, anchors).map((part) => ({
    by: Math.min(secondAt(beganAt, Math.min(asPlanned.at, stop)), ...startsAfter(anchors, part)),
    turns: part,
  }))
}

/**
 * The place in the plan's list of each turn of a round. More turns than the plan has stand a fraction behind its last;
 * a round that the plan does not know stands behind all that it does.
 */
function placesOfRound(planned: readonly PlannedTurn[], round: number): (place: number) => number {
  const first = firstOfRound(planned, round)
  if (first === null) return (place) => planned.length + 1000 * (round + 1) + place
  const count = planned.filter((turn) => turn.round === round).length
  return (place) => first + (place < count ? place : count - 1 + (place - count + 1) / 1000)
}

/** A round that ended too soon after a later turn to have been played since ended before that turn. */
function beforeLater(by: Seconds, turns: readonly UntimedTurn[], anchors: readonly Anchor[]): Seconds {
  const last = turns.at(-1)?.index ?? 0
  const later = anchors
    .filter(({ index, start, end }) => index > last && start < by && isTooSoon(by - end, turns))
    .map(({ start }) => start)
  const earliest = Math.min(by, ...later)
  return earliest < by ? beforeLater(earliest, turns, anchors) : by
}

/** Less than half of the time that turns are planned to take. */
function isTooSoon(seconds: Seconds, turns: readonly UntimedTurn[]): boolean {
  return 2 * seconds < plannedLength(turns.map(({ turn }) => turn))
}

/** Turns without those that have their time, in runs that none of those interrupts. */
function splitAround(
  turns: readonly UntimedTurn[],
  anchors: readonly Anchor[],
): readonly (readonly UntimedTurn[])[] {
  const timed = new Set(anchors.map(({ index }) => index))
  const runs: UntimedTurn[][] = []
  let isOpen = false
  let lastIndex = Number.NEGATIVE_INFINITY
  for (const own of turns) {
    const isCut = anchors.some(({ index }) => lastIndex < index && index < own.index)
    lastIndex = own.index
    if (timed.has(own.index)) {
      isOpen = false
    } else {
      if (!isOpen || isCut) runs.push([])
      isOpen = true
      runs.at(-1)?.push(own)
    }
  }
  return runs
}

function startsAfter(anchors: readonly Anchor[], turns: readonly UntimedTurn[]): readonly Seconds[] {
  const last = turns.at(-1)?.index ?? 0
  return anchors.filter(({ index }) => index > last).map(({ start }) => start)
}

function inPlaces(turns: readonly UntimedTurn[]): readonly UntimedTurn[] {
  return [...turns].sort((a, b) => a.index - b.index)
}

function firstIndex(run: Run): number {
  return run.turns[0]?.index ?? 0
}
