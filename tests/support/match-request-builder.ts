import { newMatchRequest } from '#lineup/draft/new-match-request'
import type { PickablePlayer } from '#lineup/draft/pickable-player'
import { plainFormat } from '#lineup/draft/plain-format'
import type { MatchPlanRequest } from '#lineup/match-plan'
import { nothingMet } from '#lineup/met-seconds'
import { noWishes } from '#match/format/line-wish'
import type { MatchFormat } from '#match/format/match-format'

/** A member who may keep goal and is owed nothing. */
export function aPickable(
  own: Pick<PickablePlayer, 'id' | 'name'> & Partial<PickablePlayer>,
): PickablePlayer {
  return {
    keeps: true,
    isMember: true,
    owed: { playSeconds: 0, keepSeconds: 0, starts: 0 },
    wishes: noWishes,
    metSeconds: nothingMet,
    playedToday: 0,
    ...own,
  }
}

/** A match for these: seven a side, two halves of 25 minutes, but for what the format says otherwise. */
export function matchRequestOf(
  players: readonly PickablePlayer[],
  format: Partial<MatchFormat> = {},
): MatchPlanRequest {
  return newMatchRequest({
    format: { ...plainFormat, ...format },
    players,
    register: [],
    policyShare: 0.5,
    apart: [],
    together: [],
  })
}

/** The same for so many players p1, p2, …. */
export function aMatchRequest({ players }: { readonly players: number }): MatchPlanRequest {
  return matchRequestOf(
    Array.from({ length: players }, (_, index) =>
      aPickable({ id: `p${index + 1}`, name: `Name ${index + 1}` }),
    ),
  )
}

export const nameOf = (id: string) => `Name ${id.slice(1)}`
