import { newMatchRequest } from '#lineup/draft/new-match-request'
import type { PickablePlayer } from '#lineup/draft/pickable-player'
import { plainFormat } from '#lineup/draft/plain-format'
import type { MatchPlanRequest } from '#lineup/match-plan'
import { nothingMet } from '#lineup/met-seconds'
import { noWishes } from '#match/format/line-wish'
import type { MatchFormat } from '#match/format/match-format'

/** Players p1, p2, …, all members who may keep goal and are owed nothing. */
export function pickablePlayers(count: number): readonly PickablePlayer[] {
  return Array.from({ length: count }, (_, index) => ({
    id: `p${index + 1}`,
    name: `Name ${index + 1}`,
    keeps: true,
    isMember: true,
    owed: { playSeconds: 0, keepSeconds: 0, starts: 0 },
    wishes: noWishes,
    metSeconds: nothingMet,
    playedToday: 0,
  }))
}

/** A match of seven a side, two halves of 25 minutes, for so many players. */
export function aMatchRequest({
  players,
  format = {},
}: {
  readonly players: number
  readonly format?: Partial<MatchFormat>
}): MatchPlanRequest {
  return newMatchRequest({
    format: { ...plainFormat, ...format },
    players: pickablePlayers(players),
    register: [],
    policyShare: 0.5,
    apart: [],
    together: [],
  })
}

export const nameOf = (id: string) => `Name ${id.slice(1)}`
