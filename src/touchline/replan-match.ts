import { accept, type Result, refuse } from '#common/result'
import type { LineUpPlan } from '#lineup/line-up'
import { quickLineUp } from '#lineup/quick-line-up'
import { spellsOfLineUp } from '#lineup/spells-of-line-up'
import type { PlayerId } from '#squad/player'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchPack } from '#touchline/match-pack'
import type { MatchState } from '#touchline/match-state'
import { type MatchTail, tailsToTry } from '#touchline/match-tail'
import { sayReplan } from '#touchline/say-replan'
import type { TailWish } from '#touchline/tail-windows'

export type ReplanDeed = Extract<MatchDeed, { kind: 'replan' }>

export type ReplanRefusal =
  /** The match is over, or its planned time is. */
  | 'nothingLeft'
  /** Nobody who may play is there. */
  | 'nobodyThere'
  /** No line-up was found that keeps the rules. */
  | 'noneFound'

/**
 * The rest of the match planned anew from now on, at once, for who is there: what was called stays, who is on stays until
 * the next mark, and free places are filled. The state is that of now.
 */
export function replanMatch(
  state: MatchState,
  pack: Pick<MatchPack, 'policy'>,
  { seed = 1, ...wish }: { readonly seed?: number } & TailWish = {},
): Result<ReplanDeed, ReplanRefusal> {
  let isLeft = false
  for (const tail of tailsToTry(state, pack, wish)) {
    isLeft = true
    if (tail.problem.players.length === 0) return refuse('nobodyThere')
    const lineUp = quickLineUp(tail.problem, { seed })
    if (lineUp) return accept(replanDeed(state, tail, lineUp))
  }
  return refuse(isLeft ? 'noneFound' : 'nothingLeft')
}

/** The deed that tells all phones of a line-up for the rest, found at once or by the exact search. */
export function replanDeed(state: MatchState, tail: MatchTail, lineUp: LineUpPlan): ReplanDeed {
  const nameOf = (id: PlayerId) => state.players.find((player) => player.id === id)?.name ?? ''
  return {
    kind: 'replan',
    from: tail.from,
    spells: spellsOfLineUp(tail.problem, lineUp),
    sentence: sayReplan(tail, lineUp, nameOf),
  }
}
