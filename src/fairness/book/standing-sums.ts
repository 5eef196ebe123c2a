import { roles } from '#exposure/column'
import type { BookColumn, BookPresence } from '#fairness/book/book-rows'
import type { KindStanding } from '#fairness/standing'
import type { PlayerId } from '#squad/player'

/** A standing as the sums that lines of the book are made of. */
export function standingSums(
  standing: KindStanding,
  who: { readonly playerId: PlayerId; readonly isMember: boolean },
): { readonly columns: readonly BookColumn[]; readonly presence: BookPresence } {
  return {
    columns: roles.map((role) => ({ ...who, role, ...standing.roles[role] })),
    presence: {
      ...who,
      sessions: standing.sessionsWritten,
      sessionsPlayed: standing.attended.length,
      liveSeconds: standing.liveSeconds,
    },
  }
}
