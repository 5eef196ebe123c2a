import type { Seconds } from '#common/time'
import type { EpochMs } from '#pitch/pitch-event'
import { plannedLength } from '#pitch/plan-as-it-stands'
import type { SetAside } from '#pitch/set-aside'
import { type DoneEvent, type EventOf, eventsOf } from '#pitch/standing-events'

/** From when to when a practice ran. */
export type PitchTimes = {
  /** Null: nothing has begun. */
  readonly beganAt: EpochMs | null
  /** What the register was told up to here holds from the first second; null: nothing has begun. */
  readonly heldUntil: EpochMs | null
  /** Null: not stopped. */
  readonly endedAt: EpochMs | null
  readonly setAside: readonly SetAside[]
}

/** What says that something was played: of each turn and each round only the tap that stands. */
export type PlayTaps = {
  readonly starts: readonly EventOf<'turnStart'>[]
  readonly roundsDone: readonly EventOf<'roundDone'>[]
  readonly asPlanned: EventOf<'asPlanned'> | null
}

type Beginning = { readonly at: EpochMs; readonly heldUntil: EpochMs }

/**
 * When the practice began and when it was stopped. It began with the first tap of that, or with the first turn where
 * that was before it; where nobody tapped it, so long before the first round's end as that round is planned to take.
 * So too where somebody says that all was as planned and the practice would have begun only just before.
 * A stop holds unless something was played after it.
 */
export function pitchTimes(standing: readonly DoneEvent[], taps: PlayTaps): PitchTimes {
  const begins = eventsOf(standing, 'begin')
  const stops = eventsOf(standing, 'stop')
  const began = beginning(standing, taps)
  const setAside: SetAside[] = begins.slice(1).map(({ id }) => ({ id, why: 'alreadyBegun' }))
  if (!began) {
    const idle = stops.map(({ id }) => aside(id, 'notBegun'))
    return { beganAt: null, heldUntil: null, endedAt: null, setAside: [...setAside, ...idle] }
  }
  const played = [...taps.starts, ...taps.roundsDone]
  const isBeforePlay = (stop: EventOf<'stop'>) => played.some((event) => event.at > stop.at)
  const last = stops.find((stop) => !isBeforePlay(stop))
  for (const stop of stops) {
    if (isBeforePlay(stop)) setAside.push(aside(stop.id, 'wentOn'))
    else if (stop !== last) setAside.push(aside(stop.id, 'alreadyStopped'))
  }
  const endedAt = last ? Math.max(last.at, began.at) : null
  return { beganAt: began.at, heldUntil: began.heldUntil, endedAt, setAside }
}

function beginning(standing: readonly DoneEvent[], taps: PlayTaps): Beginning | null {
  const { asPlanned, roundsDone, starts } = taps
  const firstStart = starts[0]?.at ?? Number.POSITIVE_INFINITY
  const begins = eventsOf(standing, 'begin')
  const tapped = Math.min(begins[0]?.at ?? Number.POSITIVE_INFINITY, firstStart)
  const rounds = roundsDone.filter(({ at }) => at < tapped).map(backFrom)
  const earliest = Math.min(tapped, ...rounds)
  // Who says afterwards that all was as planned may tap begin in the same breath.
  const isUntapped = starts.length + roundsDone.length === 0
  if (asPlanned && isUntapped && 2 * (asPlanned.at - earliest) < asPlanned.at - backFrom(asPlanned)) {
    const at = backFrom(asPlanned)
    return { at, heldUntil: registerOver(standing, { from: at, to: asPlanned.at }) }
  }
  return Number.isFinite(earliest) ? { at: earliest, heldUntil: earliest } : null
}

/** How long a register takes to tap. */
const registerMs = 5 * 60_000

/**
 * Until when a register was still being taken, in a practice whose beginning nobody tapped: shortly after its first tap,
 * or, where that came only in the second half, to the end: then it was filled in afterwards.
 */
function registerOver(
  standing: readonly DoneEvent[],
  practice: { readonly from: EpochMs; readonly to: EpochMs },
): EpochMs {
  const first = eventsOf(standing, 'register')[0]?.at ?? practice.from
  const isAfterwards = 2 * first > practice.from + practice.to
  return isAfterwards ? practice.to : Math.max(practice.from, first + registerMs)
}

function backFrom({ at, deed }: EventOf<'roundDone'> | EventOf<'asPlanned'>): EpochMs {
  return at - plannedLength(deed.turns) * 1000
}

function aside(id: string, why: SetAside['why']): SetAside {
  return { id, why }
}

/** Whole seconds from the beginning; what was tapped before it holds from its first second. */
export function secondAt(beganAt: EpochMs, at: EpochMs): Seconds {
  return Math.max(0, Math.floor((at - beganAt) / 1000))
}
