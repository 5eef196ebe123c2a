import { findOverlaps } from '#common/overlap'
import type { RegisterFault } from '#squad/checks/register-fault'
import type { PresenceLine } from '#squad/presence'

/** Lines of one player must not overlap; they may touch. */
export function checkLineOverlap(register: readonly PresenceLine[]): readonly RegisterFault[] {
  return findOverlaps(register.map(({ playerId, from, to }) => ({ of: playerId, from, to }))).map(
    ({ later, earlier }) => ({ rule: 'linesOverlap', line: later, other: earlier }),
  )
}
