import type { Seconds } from '#common/time'
import { longestWaits } from '#planning/plan-measures'
import type { PlanRequest } from '#planning/practice-plan'
import { turnFrames } from '#planning/turn-frames'
import type { RotationPlan } from '#rotation/plan'
import type { PlayerId } from '#squad/player'

/** How long anybody waits in a plan. Who waits longer than the others because fewer turns were agreed is told apart. */
export type WaitsTold = {
  readonly turns: number
  /** Of whoever waits longest by the clock; null: nobody waits at all. */
  readonly longest: { readonly playerId: PlayerId; readonly seconds: Seconds } | null
  readonly byAgreement: readonly { readonly playerId: PlayerId; readonly turns: number }[]
}

export function waitsTold(request: PlanRequest, plan: RotationPlan): WaitsTold {
  const { rounds } = request.design
  const waits = longestWaits(plan, { rounds, turns: turnFrames(rounds) }).map((wait, index) => ({
    ...wait,
    playerId: request.players[index]?.playerId ?? '',
    isAgreed: (request.players[index]?.agreed?.dueShare ?? 1) < 1,
  }))
  const turns = Math.max(0, ...waits.filter(({ isAgreed }) => !isAgreed).map((wait) => wait.turns))
  const isLonger = (wait: (typeof waits)[number]) => wait.isAgreed && wait.turns > turns
  const [longest] = waits
    .filter((wait) => !isLonger(wait) && wait.turns > 0)
    .sort((a, b) => b.seconds - a.seconds)
  return { turns, longest: longest ?? null, byAgreement: waits.filter(isLonger) }
}
