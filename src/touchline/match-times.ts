import type { Seconds } from '#common/time'
import type { MatchFormat } from '#match/format/match-format'
import type { EpochMs } from '#pitch/pitch-event'
import { type DoneEvent, eventsOf } from '#pitch/standing-events'
import { momentOfSecond, type PlayedPeriod, playedMs } from '#touchline/match-clock'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchSetAside } from '#touchline/match-set-aside'
import { periodFrame } from '#touchline/period-frame'

export type MatchTimes = {
  readonly periods: readonly PlayedPeriod[]
  /** The match is over since; null: not yet. */
  readonly endedAt: EpochMs | null
  readonly setAside: readonly MatchSetAside[]
}

type Open = {
  period: number
  startedAt: EpochMs
  stops: { from: EpochMs; to: EpochMs | null }[]
  /** Of something that is done only while a period runs. */
  lastTap: EpochMs
}

/** A whistle that was forgotten is heard so long after the planned end; what is tapped later cannot be the whistle. */
const latestWhistle = 15 * 60

/**
 * When each period was played. Of two kick-offs of a period the first counts; a kick-off ends the period before it where
 * nobody tapped the whistle. A full time holds unless a period was kicked off after it.
 */
export function matchTimes(
  standing: readonly DoneEvent<MatchDeed>[],
  format: Pick<MatchFormat, 'periodSeconds'>,
): MatchTimes {
  const periods: PlayedPeriod[] = []
  const setAside: MatchSetAside[] = []
  const lastKickOff = eventsOf(standing, 'kickOff').at(-1)?.at ?? Number.NEGATIVE_INFINITY
  let open: Open | null = null
  let endedAt: EpochMs | null = null
  const aside = ({ id }: { readonly id: string }, why: MatchSetAside['why']) => setAside.push({ id, why })
  const close = (of: Open, at: EpochMs, isWhistle: boolean) => {
    const end = endOf(of, at, { isWhistle, planned: periodFrame(format, of.period).seconds })
    const stops = of.stops.map((stop) => ({ from: stop.from, to: stop.to ?? end.at }))
    const length = Math.floor(playedMs(of, end.at) / 1000)
    periods.push({ ...played(of), stops, endedAt: end.at, isEndAssumed: end.isAssumed, length })
    open = null
  }
  const played = ({ period, startedAt, stops }: Open): PlayedPeriod => {
    const { seconds: planned, isExtra } = periodFrame(format, period)
    const last = periods.at(-1)
    const start = last ? last.start + (last.length ?? 0) : 0
    return {
      period,
      startedAt,
      stops,
      start,
      planned,
      isExtra,
      endedAt: null,
      isEndAssumed: false,
      length: null,
    }
  }
  for (const event of standing) {
    const { at } = event
    // Written to again below: TypeScript must not believe it to be null for good.
    const running = open as Open | null
    switch (event.deed.kind) {
      case 'kickOff': {
        const { period } = event.deed
        const last = running?.period ?? periods.at(-1)?.period ?? -1
        if (period <= last) aside(event, 'alreadyBegun')
        else {
          if (running) close(running, at, false)
          open = { period, startedAt: at, stops: [], lastTap: at }
        }
        break
      }
      case 'periodEnd': {
        const ended = event.deed.period
        if (running?.period === ended) close(running, at, true)
        else aside(event, periods.some(({ period }) => period === ended) ? 'alreadyEnded' : 'notBegun')
        break
      }
      case 'clockStops':
        if (!running) aside(event, 'notBegun')
        else if (running.stops.at(-1)?.to === null) aside(event, 'alreadyStopped')
        else running.stops.push({ from: at, to: null })
        break
      case 'clockGoesOn': {
        const stop = running?.stops.at(-1)
        if (!stop || stop.to !== null) aside(event, 'notBegun')
        else stop.to = at
        break
      }
      case 'fullTime':
        if (at < lastKickOff) aside(event, 'wentOn')
        else if (endedAt !== null) aside(event, 'alreadyStopped')
        else if (!running && periods.length === 0) aside(event, 'notBegun')
        else {
          if (running) close(running, at, true)
          endedAt = at
        }
        break
      case 'changeMade':
      case 'changeDropped':
      case 'places':
      case 'sentOff':
      case 'goal':
        if (running) running.lastTap = at
        break
    }
  }
  const running = open as Open | null
  if (running) periods.push(played(running))
  return { periods, endedAt, setAside }
}

/**
 * When a period ended that is over by `at`. Where the clock stood it ended then. Without a whistle, or with one that was
 * tapped much too late, it is taken to be as long as planned, and to have lasted while anything was tapped in it.
 */
function endOf(
  of: Open,
  at: EpochMs,
  { isWhistle, planned }: { readonly isWhistle: boolean; readonly planned: Seconds },
): { readonly at: EpochMs; readonly isAssumed: boolean } {
  const stop = of.stops.at(-1)
  if (stop?.to === null) return { at: stop.from, isAssumed: !isWhistle }
  const isLate = playedMs(of, at) / 1000 > planned + (isWhistle ? latestWhistle : 0)
  if (!isLate) return { at, isAssumed: !isWhistle }
  return { at: Math.min(at, Math.max(of.lastTap, momentOfSecond(of, planned))), isAssumed: true }
}
