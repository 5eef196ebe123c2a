import type { Day } from '#common/time'
import type { SquadId } from '#squad/squad'

/** Days without practice, both belonging to it: of the whole club, or of one squad. */
export type ClosedDays = {
  readonly id: string
  /** Null: of the whole club. */
  readonly squadId: SquadId | null
  readonly firstDay: Day
  readonly lastDay: Day
  /** Such as "Half term". */
  readonly name: string
}
