import type { Seconds } from '#common/time'
import type { EpochMs } from '#pitch/pitch-event'
import { plannedLength } from '#pitch/plan-as-it-stands'
import type { SetAside } from '#pitch/set-aside'
import { type DoneEvent, type EventOf, eventsOf } from '#pitch/standing-events'

/** From when to when a practice ran. */
export type PitchTimes = {
  /** Null: nothing has begun. */
  readonly beganAt: EpochMs | null
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

/**
 * When the practice began and when it was stopped. It began with the first tap of that, or with the first turn where
 * that was before it; where nobody tapped it, so long before the first round's end as that round is planned to take.
 * A stop holds unless something was played after it.
 */
export function pitchTimes(standing: readonly DoneEvent[], taps: PlayTaps): PitchTimes {
  const begins = eventsOf(standing, 'begin')
  const stops = eventsOf(standing, 'stop')
  const beganAt = beginning(begins, taps)
  const setAside: SetAside[] = begins.slice(1).map(({ id }) => ({ id, why: 'alreadyBegun' }))
  if (beganAt === null) {
    return {
      beganAt,
      endedAt: null,
      setAside: [...setAside, ...stops.map(({ id }) => aside(id, 'notBegun'))],
    }
  }
  const played = [...taps.starts, ...taps.roundsDone]
  const isBeforePlay = (stop: EventOf<'stop'>) => played.some((event) => event.at > stop.at)
  const last = stops.find((stop) => !isBeforePlay(stop))
  for (const stop of stops) {
    if (isBeforePlay(stop)) setAside.push(aside(stop.id, 'wentOn'))
    else if (stop !== last) setAside.push(aside(stop.id, 'alreadyStopped'))
  }
  return { beganAt, endedAt: last ? Math.max(last.at, beganAt) : null, setAside }
}

function beginning(begins: readonly EventOf<'begin'>[], taps: PlayTaps): EpochMs | null {
  const first = Math.min(...[...begins, ...taps.starts].map(({ at }) => at))
  const backFrom = [...taps.roundsDone, ...(taps.asPlanned ? [taps.asPlanned] : [])]
    .filter(({ at }) => at < first)
    .map(({ at, deed }) => at - plannedLength(deed.turns) * 1000)
  const earliest = Math.min(first, ...backFrom)
  return Number.isFinite(earliest) ? earliest : null
}

function aside(id: string, why: SetAside['why']): SetAside {
  return { id, why }
}

/** Whole seconds from the beginning; what was tapped before it holds from its first second. */
export function secondAt(beganAt: EpochMs, at: EpochMs): Seconds {
  return Math.max(0, Math.floor((at - beganAt) / 1000))
}
