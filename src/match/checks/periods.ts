import type { MatchFault } from '#match/checks/match-fault'
import type { Period } from '#match/match'

/** Every period must end after it begins. */
export function checkPeriodLength(periods: readonly Period[]): readonly MatchFault[] {
  return periods.flatMap((own, period) =>
    own.start < own.end ? [] : [{ rule: 'periodWithoutLength', period } as const],
  )
}

/** Periods stand in order of time: none begins before every one above it has ended. */
export function checkPeriodOrder(periods: readonly Period[]): readonly MatchFault[] {
  const faults: MatchFault[] = []
  let lastEnd = Number.NEGATIVE_INFINITY
  for (const [period, { start, end }] of periods.entries()) {
    if (start < lastEnd) faults.push({ rule: 'periodOutOfOrder', period, lastEnd })
    if (start < end) lastEnd = Math.max(lastEnd, end)
  }
  return faults
}
