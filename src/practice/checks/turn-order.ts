import type { PracticeFault } from '#practice/checks/practice-fault'
import type { Turn } from '#practice/turn'

/** Turns stand in order of time: none begins before every one above it has ended. */
export function checkTurnOrder(turns: readonly Turn[]): readonly PracticeFault[] {
  const faults: PracticeFault[] = []
  let lastEnd = Number.NEGATIVE_INFINITY
  for (const [turn, { start, end }] of turns.entries()) {
    if (start < lastEnd) faults.push({ rule: 'turnOutOfOrder', turn, lastEnd })
    if (start < end) lastEnd = Math.max(lastEnd, end)
  }
  return faults
}
