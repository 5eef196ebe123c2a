import { isSamePair } from '#common/is-same-pair'
import { draftOf, draftOfSaved, type LineUpDraft } from '#lineup/draft/line-up-draft'
import { newMatchRequest, plannedPlayer } from '#lineup/draft/new-match-request'
import type { PickablePlayer } from '#lineup/draft/pickable-player'
import type { MatchPlan, MatchPlanRequest } from '#lineup/match-plan'
import type { MatchFormat } from '#match/format/match-format'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'

type Two = readonly [PlayerId, PlayerId]

export type LineUpStart = {
  readonly plan: MatchPlan | null
  /** How the squad plays; a plain one where nobody has said. */
  readonly format: MatchFormat
  readonly players: readonly PickablePlayer[]
  readonly register: readonly RegisterLine[]
  readonly policyShare: number
  /** Pairs that stand on the day. */
  readonly apart: readonly Two[]
  readonly together: readonly Two[]
}

/** What the page begins with: the line-up that was saved, by the book as it stands now; else everyone and the format. */
export function firstLineUpDraft(start: LineUpStart): LineUpDraft {
  if (!start.plan) return draftOf(newMatchRequest(start))
  const now = asOfNow(start.plan, start)
  const { spells: _spells, proof: _proof, ...request } = now
  return draftOfSaved(now) ?? draftOf(request)
}

function asOfNow(plan: MatchPlan, { players, apart, together }: LineUpStart): MatchPlan {
  const known = new Map(players.map((player) => [player.id, player]))
  return {
    ...plan,
    players: plan.players.map((own) => {
      const player = known.get(own.playerId)
      if (!player) return own
      const { from, to } = own
      return { ...plannedPlayer(player, plan.isAfresh), from, to, keeps: player.keeps && own.keeps }
    }),
    ...pairsOfNow(plan, { apart, together }),
  }
}

/** Pairs noted since are kept apart, those that have ended are free. */
function pairsOfNow(
  plan: MatchPlanRequest,
  now: Pick<LineUpStart, 'apart' | 'together'>,
): Pick<MatchPlanRequest, 'apart' | 'mayMeet' | 'together'> {
  const has = (pairs: readonly Two[], pair: Two) => pairs.some((own) => isSamePair(own, pair))
  const known = [...plan.apart, ...(plan.mayMeet ?? [])]
  return {
    apart: [
      ...plan.apart.filter((pair) => has(now.apart, pair)),
      ...now.apart.filter((pair) => !has(known, pair)),
    ],
    mayMeet: (plan.mayMeet ?? []).filter((pair) => has(now.apart, pair)),
    together: plan.together.filter((pair) => has(now.together, pair)),
  }
}
