import type { Seconds } from '#common/time'
import { type PlayedPart, seatedIn } from '#pitch/played-turns'
import type { JoinedPresence } from '#squad/joined-presence'
import type { PlayerId } from '#squad/player'

/** From the end of a player's place, or its coming, to its next place, or its going: gaps between balls included. */
export type ClockWait = { readonly from: Seconds; readonly to: Seconds; readonly playerId: PlayerId }

export type PlayerWaits = {
  /** Those in which it sat out a part of a turn at least. The last may still be going on. */
  readonly waits: readonly ClockWait[]
  /** Since when it has had no place, while it is there; null: it has one, or is not there. */
  readonly since: Seconds | null
}

/** How long everyone waited by the clock, up to a second of the practice. */
export function clockWaits(
  turns: readonly { readonly parts: readonly PlayedPart[] }[],
  presence: JoinedPresence,
  until: Seconds,
): ReadonlyMap<PlayerId, PlayerWaits> {
  const parts = turns
    .flatMap((turn) => turn.parts)
    .map((part) => ({ ...part, seated: new Set(seatedIn(part.stations)) }))
  return new Map(
    [...presence].map(([playerId, lines]) => [playerId, waitsOf(playerId, { lines, parts, until })]),
  )
}

function waitsOf(
  playerId: PlayerId,
  at: {
    readonly lines: readonly { readonly from: Seconds; readonly to: Seconds }[]
    readonly parts: readonly (PlayedPart & { readonly seated: ReadonlySet<PlayerId> })[]
    readonly until: Seconds
  },
): PlayerWaits {
  const waits: ClockWait[] = []
  const own = at.parts.filter(({ seated }) => seated.has(playerId))
  let since: Seconds | null = null
  for (const line of at.lines) {
    const lineEnd = Math.min(line.to, at.until)
    let from = line.from
    const close = (to: Seconds) => {
      if (from < to && at.parts.some((part) => Math.max(part.start, from) < Math.min(part.end, to))) {
        waits.push({ playerId, from, to })
      }
    }
    for (const part of own.filter(({ start, end }) => line.from <= start && end <= line.to)) {
      close(part.start)
      from = part.end
    }
    close(lineEnd)
    since = line.to > at.until && from <= at.until ? from : null
  }
  return { waits, since }
}

/** The longest of everyone's waits, the first of equals; null: nobody waited. */
export function longestWait(waits: ReadonlyMap<PlayerId, PlayerWaits>): ClockWait | null {
  let longest: ClockWait | null = null
  for (const wait of [...waits.values()].flatMap((own) => own.waits)) {
    if (!longest || wait.to - wait.from > longest.to - longest.from) longest = wait
  }
  return longest
}
