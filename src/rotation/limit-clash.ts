import { checkPlan } from '#rotation/check-plan'
import { hasOwnLimits } from '#rotation/limits'
import { mayTakeIn } from '#rotation/may-take'
import { planWithinLimits } from '#rotation/plan-within-limits'
import type { RotationProblem } from '#rotation/problem'

/** What a single player agreed to, as a part of an impossibility. Indexes from 0. */
export type LimitPart = {
  readonly rule: 'mostTurns' | 'restsAfterTurn'
  readonly turn: number
  readonly player: number
}

/**
 * What single players agreed to and no plan was found for: those whose limit alone stands in the way, or all of them
 * where no single one does. Each with the first turn in which the best plan met breaks a limit. Other than the rest of
 * a clash this is what a search could not find, not a proof that there is none.
 */
export function limitClash(problem: RotationProblem): readonly LimitPart[] {
  if (!hasOwnLimits(problem)) return []
  const { plan, excess } = planWithinLimits(problem, mayTakeIn(problem))
  if (plan === null || excess === 0) return []
  const broken = checkPlan({ ...problem, restLimit: null }, plan)
  const turn = Math.min(...broken.map((own) => own.turn))
  const parts = problem.players.flatMap((own, player): LimitPart[] => [
    ...(own.mostTurns == null ? [] : [{ rule: 'mostTurns' as const, turn, player }]),
    ...(own.restsAfterTurn ? [{ rule: 'restsAfterTurn' as const, turn, player }] : []),
  ])
  const alone = parts.filter((part) => {
    const without = withoutLimit(problem, part)
    return planWithinLimits(without, mayTakeIn(without)).excess === 0
  })
  return alone.length > 0 ? alone : parts
}

/** The same request without one limit of one player. */
export function withoutLimit(
  problem: RotationProblem,
  part: Pick<LimitPart, 'rule' | 'player'>,
): RotationProblem {
  const lifted = part.rule === 'mostTurns' ? { mostTurns: null } : { restsAfterTurn: false }
  return {
    ...problem,
    players: problem.players.map((own, player) => (player === part.player ? { ...own, ...lifted } : own)),
  }
}
