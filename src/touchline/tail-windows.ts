import type { Seconds } from '#common/time'
import { defaultMarks } from '#lineup/default-marks'
import { placesFor } from '#lineup/places-for'
import { placesAsTaken, type TailWindow } from '#lineup/tail-problem'
import { placesInAll } from '#match/format/places-in-all'
import { calledSeconds } from '#touchline/calls'
import { isAble } from '#touchline/is-able'
import type { MatchState } from '#touchline/match-state'
import { periodFrame } from '#touchline/period-frame'
import type { SettledSet } from '#touchline/plans-in-force'

/** Nobody can be got ready in less. */
const leadSeconds: Seconds = 30

/** The change that was called already: near enough to be left as it is. */
function calledSet(state: MatchState): SettledSet | null {
  const { period } = state
  const next = state.call?.isDue ? state.upcoming[0] : state.call
  if (!period || !next || next.secondsToGo > calledSeconds) return null
  return state.sets.find((set) => set.period === period.period && set.due === next.due) ?? null
}

export type TailWish = {
  /** A change may be made as soon as somebody can be got ready, marks or not. */
  readonly hasSoon?: boolean
}

/**
 * The windows of what is left of the planned periods, in the plan's seconds. In the first, who is on stays on: only free
 * places are filled. So it goes to the change that was called, which is made, and to the mark after it.
 */
export function tailWindows(state: MatchState, { hasSoon = false }: TailWish = {}): readonly TailWindow[] {
  const { format, period, planSecond } = state
  const lastPlayed = state.periods.at(-1)?.period ?? -1
  const isLeft = period && planSecond < periodFrame(format, period.period).start + period.planned
  const first = isLeft && !period.isExtra ? period.period : lastPlayed + 1
  return format.periodSeconds.flatMap((_, index) => {
    if (index < first) return []
    return index === period?.period
      ? runningWindows(state, hasSoon)
      : plainWindows(state, index, edgesOf(state, index))
  })
}

function runningWindows(state: MatchState, hasSoon: boolean): readonly TailWindow[] {
  const { period, planSecond, on, places } = state
  if (!period) return []
  const called = calledSet(state)
  const frame = periodFrame(state.format, period.period)
  const end = frame.start + frame.seconds
  const from = called ? called.due : planSecond
  const soon = hasSoon && !state.format.changesAtBreaksOnly ? [from + leadSeconds] : []
  const marks = edgesOf(state, period.period).filter((edge) => edge > from + leadSeconds)
  const later = [...soon, ...marks].filter((edge) => edge < end)
  const next = later[0] ?? end
  const taken = placesAsTaken(on, places)
  const now: TailWindow = {
    period: period.period,
    start: planSecond,
    end: called ? called.due : next,
    places: taken,
    held: heldOn(state, on, taken),
  }
  const after = called ? [windowOfCall(state, called, next)] : []
  return [now, ...after, ...plainWindows(state, period.period, [...later, end])]
}

/** The called change as it was called, whoever left the pitch meanwhile. */
function windowOfCall(state: MatchState, called: SettledSet, end: Seconds): TailWindow {
  const { on, places, players } = state
  const able = new Set(players.filter(isAble).map(({ id }) => id))
  const before = called.before ?? on
  const coming = called.on.filter(
    ({ playerId }) => able.has(playerId) && !before.some((one) => one.playerId === playerId),
  )
  const goes = new Set(
    before
      .filter((one) => !called.on.some(({ playerId }) => playerId === one.playerId))
      .map((one) => one.playerId),
  )
  // With nobody left to fill the place, whoever was to go off stays.
  const spare = Math.max(0, able.size - placesInAll(places))
  const off = on.filter(({ playerId }) => goes.has(playerId)).slice(0, spare)
  const isOff = new Set(off.map(({ playerId }) => playerId))
  const isOn = new Set(on.map(({ playerId }) => playerId))
  const comesOn = coming.filter(({ playerId }) => !isOn.has(playerId))
  const room = placesInAll(places) - (on.length - off.length)
  const after = [...on.filter(({ playerId }) => !isOff.has(playerId)), ...comesOn.slice(0, Math.max(0, room))]
  const taken = placesAsTaken(after, places)
  return {
    period: called.period,
    start: called.due,
    end,
    places: taken,
    held: [
      ...heldOn(state, after, taken),
      ...off.map(({ playerId }) => ({ id: playerId, place: 'off' as const })),
    ],
  }
}

/**
 * Who is on stays in its line, as far as the line has room for all who are in it. Where goal is empty and nobody who is
 * off may keep it, one who is on must be free to.
 */
function heldOn(
  { players }: MatchState,
  on: MatchState['on'],
  places: TailWindow['places'],
): TailWindow['held'] {
  const isInGoal = on.some(({ line }) => line === 'keeper')
  const keepers = new Set(players.filter((player) => player.keeps && isAble(player)).map(({ id }) => id))
  const isKeeperOff = [...keepers].some((id) => !on.some(({ playerId }) => playerId === id))
  const isNeeded = places.keeper > 0 && !isInGoal && !isKeeperOff
  return on.flatMap(({ playerId, line }) => {
    const hasRoom = on.filter((one) => one.line === line).length <= places[line]
    return hasRoom && !(isNeeded && keepers.has(playerId)) ? [{ id: playerId, place: line }] : []
  })
}

function plainWindows(state: MatchState, period: number, edges: readonly Seconds[]): readonly TailWindow[] {
  return edges.slice(1).map((end, index) => {
    const start = edges[index] ?? end
    return { period, start, end, places: placesAt(state, start), held: [] }
  })
}

/** The places from a second of the plan on: those who were sent off for a time are back by then. */
function placesAt(state: MatchState, planSecond: Seconds): TailWindow['places'] {
  const { places, players, plan, planSecond: now, second } = state
  const full = plan?.places ?? places
  const gone = players.filter(
    ({ sentOff }) => sentOff && (sentOff.until === null || sentOff.until - second > planSecond - now),
  ).length
  const returned = players.filter(({ sentOff }) => sentOff !== null).length - gone
  return returned === 0 ? places : gone === 0 ? full : placesFor(full, placesInAll(full) - gone)
}

/** Kick-off, marks, comings and goings, and the end of a period, in the plan's seconds. */
function edgesOf(state: MatchState, index: number): readonly Seconds[] {
  const { format, plan, players, planSecond, second } = state
  const { start, seconds } = periodFrame(format, index)
  const able = players.filter(({ state: how }) => how === 'here').length
  const marks = plan?.marks[index] ?? []
  const inside = marks.length > 0 ? marks : (defaultMarks(format, able)[index] ?? [])
  const people = players.flatMap(({ sentOff, expectedUntil }) => [
    ...(sentOff?.until ? [planSecond + sentOff.until - second] : []),
    ...(expectedUntil === null ? [] : [expectedUntil]),
  ])
  const changes = format.changesAtBreaksOnly ? [] : inside.map((mark) => start + mark)
  const between = [...changes, ...people].filter((edge) => start < edge && edge < start + seconds)
  return [...new Set([start, ...between, start + seconds])].sort((one, other) => one - other)
}
