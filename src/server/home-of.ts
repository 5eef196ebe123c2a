import 'server-only'
import type { Viewer } from '#access/viewer'

/** Where a viewer begins: the club's own pages, the review, the squad's day, the pitch, or the page of the one child. Null: nowhere of its own, or several. */
export function homeOf(viewer: Viewer): string | null {
  const [squadId] = viewer.squadIds
  const [playerId, another] = viewer.playerIds
  switch (viewer.role) {
    case 'administrator':
      return '/club'
    case 'headCoach':
      return '/review'
    case 'coach':
      return squadId ? `/squads/${squadId}/today` : null
    case 'guardian':
      return playerId && !another ? `/family/${playerId}` : null
    case 'helper':
      return '/pitch'
  }
}
