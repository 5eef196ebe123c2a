import type { Seconds } from '#common/time'
import type { PlannedTurn } from '#planning/practice-plan'

export type LaidTurn = { readonly start: Seconds; readonly end: Seconds }

/**
 * Turns that nobody timed, laid into the time there was, in whole seconds: with their planned lengths and gaps where
 * that is enough, at its end (`end`) or at its beginning (`start`); else all in proportion, every turn at least a
 * second. Where there are more turns than seconds, the last ones have no length.
 */
export function layTurns(
  turns: readonly Pick<PlannedTurn, 'seconds' | 'gapSeconds'>[],
  room: { readonly from: Seconds; readonly to: Seconds; readonly at: 'start' | 'end' },
): readonly LaidTurn[] {
  const available = Math.max(0, room.to - room.from)
  const edges = plannedEdges(turns)
  const planned = edges.at(-1)?.end ?? 0
  if (planned <= available) {
    const from = room.at === 'end' ? room.to - planned : room.from
    return edges.map(({ start, end }) => ({ start: from + start, end: from + end }))
  }
  const squeezed = edges.map(({ start, end }) => ({
    start: room.from + Math.round((start * available) / planned),
    end: room.from + Math.round((end * available) / planned),
  }))
  if (squeezed.every(({ start, end }) => start < end)) return squeezed
  return shareOut(turns.length, room.from, available)
}

function plannedEdges(turns: readonly Pick<PlannedTurn, 'seconds' | 'gapSeconds'>[]): readonly LaidTurn[] {
  let next = 0
  return turns.map(({ seconds, gapSeconds }) => {
    const start = next
    next = start + seconds + gapSeconds
    return { start, end: start + seconds }
  })
}

/** So little time that a turn in proportion would have none: as even as whole seconds can be, without gaps. */
function shareOut(count: number, from: Seconds, available: Seconds): readonly LaidTurn[] {
  const edge = (index: number) =>
    from + (available >= count ? Math.floor((index * available) / count) : Math.min(index, available))
  return Array.from({ length: count }, (_, index) => ({ start: edge(index), end: edge(index + 1) }))
}
