import type { Problem } from '#common/problem'
import type { MatchPlanRequest } from '#lineup/match-plan'
import type { Policy } from '#squad/policy'

export type LineUpPolicy = Pick<Policy, 'leastMatchShare' | 'toleranceSeconds' | 'toleranceShare'>

export type NameOf = (playerId: string) => string

export type AskLineUp = (change: (request: MatchPlanRequest) => MatchPlanRequest) => void

/** What stands in the way, of one part of the page: those whose path begins with one of its own. */
export function problemsAt(problems: readonly Problem[], ...begins: readonly string[]): readonly Problem[] {
  return problems.filter(({ path }) => begins.some((own) => path === own || path.startsWith(`${own}.`)))
}
