import type { Day, Seconds } from '#common/time'
import type { Turn } from '#practice/turn'
import type { PresenceLine } from '#squad/presence'

export type Practice = {
  readonly id: string
  readonly day: Day
  /** Whole length; null when nobody wrote it down. */
  readonly lengthSeconds: Seconds | null
  readonly register: readonly PresenceLine[]
  /** In order of time, not overlapping. */
  readonly turns: readonly Turn[]
}
