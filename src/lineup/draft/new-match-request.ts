import { defaultMarks } from '#lineup/default-marks'
import type { PickablePlayer } from '#lineup/draft/pickable-player'
import { placesOfFormat } from '#lineup/draft/places-of-format'
import { rulesOfFormat } from '#lineup/draft/rules-of-format'
import { thereByRegister } from '#lineup/draft/there-by-register'
import type { MatchPlanPlayer, MatchPlanRequest } from '#lineup/match-plan'
import type { Owed } from '#lineup/problem'
import type { MatchFormat } from '#match/format/match-format'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'

type Two = readonly [PlayerId, PlayerId]

/** What is asked of the first plan: whoever is in the register, else every member, by the format as it is. */
export function newMatchRequest(of: {
  readonly format: MatchFormat
  readonly players: readonly PickablePlayer[]
  readonly register: readonly RegisterLine[]
  /** The club's own promise, where the format has none. */
  readonly policyShare: number
  readonly apart: readonly Two[]
  readonly together: readonly Two[]
}): MatchPlanRequest {
  const { format, register } = of
  const players = of.players.flatMap((player): readonly MatchPlanPlayer[] => {
    const own = plannedPlayer(player)
    if (register.length === 0) return player.isMember ? [own] : []
    const there = thereByRegister(register, { playerId: player.id, format })
    return there ? [{ ...own, ...there }] : []
  })
  return {
    format,
    places: placesOfFormat(format),
    marks: defaultMarks(format, players.length),
    players,
    rules: rulesOfFormat(format),
    leastShare: format.leastTime.share ?? of.policyShare,
    apart: of.apart,
    mayMeet: [],
    together: of.together,
    isAfresh: false,
    locks: [],
  }
}

const nothingOwed: Owed = { playSeconds: 0, keepSeconds: 0, starts: 0 }

/** A player as a plan begins to count on it: there throughout. */
export function plannedPlayer(player: PickablePlayer, isAfresh = false): MatchPlanPlayer {
  const { id, keeps, owed, wishes, metSeconds, playedToday } = player
  return {
    playerId: id,
    keeps,
    from: 0,
    to: null,
    owed: isAfresh ? nothingOwed : owed,
    wishes,
    metSeconds,
    playedToday,
  }
}
