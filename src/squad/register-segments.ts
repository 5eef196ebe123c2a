import type { Seconds } from '#common/time'
import type { PlayerId } from '#squad/player'
import type { RegisterLine, RegisterState } from '#squad/register'

/** A stretch of a player's register while it is being written; `to` null: until the end of the session. */
export type RegisterSegment = {
  readonly from: Seconds
  readonly to: Seconds | null
  readonly state: RegisterState
}

/** A player's register while it is being written, in order of time. No segments: away. */
export type RegisterEntry = { readonly playerId: PlayerId; readonly segments: readonly RegisterSegment[] }

export const hereThroughout: readonly RegisterSegment[] = [{ from: 0, to: null, state: 'here' }]

/** The register with a state from a second on until the end; `away` ends it there. What was before stays. */
export function setFrom(
  segments: readonly RegisterSegment[],
  at: Seconds,
  state: RegisterState | 'away',
): readonly RegisterSegment[] {
  const before = segments
    .filter((segment) => segment.from < at)
    .map((segment) => (segment.to === null || segment.to > at ? { ...segment, to: at } : segment))
  return state === 'away' ? before : joined([...before, { from: at, to: null, state }])
}

/** The register of who came at a second: nothing before it. Who was away, or leaves before it, is here from then on. */
export function comeAt(segments: readonly RegisterSegment[], at: Seconds): readonly RegisterSegment[] {
  const after = segments.filter((segment) => segment.to === null || segment.to > at)
  const [first, ...others] = after
  return first ? [{ ...first, from: at }, ...others] : [{ from: at, to: null, state: 'here' }]
}

/** Whether a player is out for today at any time: that stands until somebody takes it back with a second answer. */
export function isOutForToday(segments: readonly RegisterSegment[]): boolean {
  return segments.some((segment) => segment.state === 'out')
}

/** The lines of a register in a session that ends at `end`; what begins at the end or later has no length and is left out. */
export function linesOfEntries(entries: readonly RegisterEntry[], end: Seconds): readonly RegisterLine[] {
  return entries.flatMap(({ playerId, segments }) =>
    segments
      .map((segment) => ({ playerId, state: segment.state, from: segment.from, to: segment.to ?? end }))
      .filter((line) => line.from < line.to),
  )
}

/** A register that was written, opened again for writing: a line that runs to the end of the session runs to its end, whenever that is. */
export function entriesOfLines(
  lines: readonly RegisterLine[],
  session: { readonly end: Seconds; readonly playerIds: readonly PlayerId[] },
): readonly RegisterEntry[] {
  return session.playerIds.map((playerId) => ({
    playerId,
    segments: joined(
      lines
        .filter((line) => line.playerId === playerId)
        .toSorted((one, other) => one.from - other.from)
        .map(({ from, to, state }) => ({ from, to: to >= session.end ? null : to, state })),
    ),
  }))
}

function joined(segments: readonly RegisterSegment[]): readonly RegisterSegment[] {
  const kept: RegisterSegment[] = []
  for (const segment of segments) {
    const last = kept.at(-1)
    if (last?.state === segment.state && last.to === segment.from)
      kept[kept.length - 1] = { ...last, to: segment.to }
    else kept.push(segment)
  }
  return kept
}

/** Who is written to come, leave or change at or after the end of the session, and when. */
export function afterTheEnd(
  entries: readonly RegisterEntry[],
  end: Seconds,
): readonly { readonly playerId: PlayerId; readonly at: Seconds }[] {
  return entries.flatMap(({ playerId, segments }) => {
    const late =
      segments.find((segment) => segment.from >= end) ?? segments.find((segment) => (segment.to ?? 0) > end)
    return late ? [{ playerId, at: late.from >= end ? late.from : (late.to ?? end) }] : []
  })
}
