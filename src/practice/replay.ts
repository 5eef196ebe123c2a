import { InvariantError } from '#common/result'
import type { PracticeEvent } from '#practice/event'
import type { Turn } from '#practice/turn'

export type Passed = Omit<Extract<PracticeEvent, { kind: 'passed' }>, 'kind' | 'id'>

/** What a practice's events add up to. */
export type ReplayedPractice = {
  /** In order of time, not overlapping. */
  readonly turns: readonly Turn[]
  /** In the order written. */
  readonly passes: readonly Passed[]
}

/**
 * Reads the events of one practice, in the order they were written, as the turns and passes that stand. A voided event
 * is as if never entered; a turn written later may lie earlier in time, as when a correction replaces one.
 * @throws InvariantError when a void voids nothing written before it, another void, or what is voided already; when two
 * ids are the same; and when turns that stand overlap or have no length.
 */
export function replayPractice(events: readonly PracticeEvent[]): ReplayedPractice {
  const standing = eventsThatStand(events)
  const turns = standing
    .flatMap((event) => (event.kind === 'turn' ? [event.turn] : []))
    .sort((a, b) => a.start - b.start || a.end - b.end)
  checkOrder(turns)
  const passes = standing.flatMap((event) =>
    event.kind === 'passed'
      ? [{ playerId: event.playerId, role: event.role, lengthSeconds: event.lengthSeconds }]
      : [],
  )
  return { turns, passes }
}

/** The events that nothing has voided, in the order written, voids left out. */
export function eventsThatStand(
  events: readonly PracticeEvent[],
): readonly Exclude<PracticeEvent, { kind: 'void' }>[] {
  const standing = new Map<string, Exclude<PracticeEvent, { kind: 'void' }>>()
  const seen = new Set<string>()
  for (const event of events) {
    if (seen.has(event.id)) throw new InvariantError('Two events have one id.', { id: event.id })
    seen.add(event.id)
    if (event.kind !== 'void') {
      standing.set(event.id, event)
    } else if (!standing.delete(event.voids)) {
      throw new InvariantError('A void must void a turn or a pass that stands.', { ...event })
    }
  }
  return [...standing.values()]
}

function checkOrder(turns: readonly Turn[]): void {
  for (const [index, turn] of turns.entries()) {
    const last = turns[index - 1]
    if (turn.start >= turn.end || (last && turn.start < last.end)) {
      throw new InvariantError('Turns must have a length and not overlap.', {
        start: turn.start,
        end: turn.end,
        lastEnd: last?.end,
      })
    }
  }
}
