import type { PracticeFault } from '#practice/checks/practice-fault'
import type { Turn } from '#practice/turn'

/** Every turn must end after it begins. */
export function checkTurnLength(turns: readonly Turn[]): readonly PracticeFault[] {
  return turns.flatMap((own, turn) =>
    own.start < own.end ? [] : [{ rule: 'turnWithoutLength', turn } as const],
  )
}
