import type { Seconds } from '#common/time'
import type { PracticeFault } from '#practice/checks/practice-fault'
import type { Turn } from '#practice/turn'

/** No turn ends after the practice does, where its length was written down. */
export function checkTurnInsidePractice(
  turns: readonly Turn[],
  lengthSeconds: Seconds | null,
): readonly PracticeFault[] {
  if (lengthSeconds === null) return []
  return turns.flatMap((own, turn) =>
    own.end > lengthSeconds ? [{ rule: 'turnAfterEnd', turn, lengthSeconds } as const] : [],
  )
}
