import type { PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'

export const viewerRoles = ['administrator', 'headCoach', 'coach', 'helper', 'guardian'] as const
export type ViewerRole = (typeof viewerRoles)[number]

/** Who asks. Loaded anew for every request, so a change of role bites at the next one. */
export type Viewer = {
  readonly clubId: string
  readonly personId: string
  readonly name: string
  readonly role: ViewerRole
  /** Squads it coaches, covers or helps with today. */
  readonly squadIds: readonly SquadId[]
  /** Children whose page it has claimed as their guardian, whatever its role. */
  readonly playerIds: readonly PlayerId[]
}
