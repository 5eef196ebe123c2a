import type { AheadClash } from '#ahead/clash'
import type { AheadProblem } from '#ahead/problem'
import { sayAheadClash } from '#ahead/say-ahead-clash'
import { formatPath } from '#exchange/json-path'
import { type LetGoAhead, nearestPlanRequest } from '#exchange/plan-request/nearest-plan-request'
import { placeOfAheadRule } from '#exchange/plan-request/place-of-ahead-clash'
import type { PlanRequest } from '#exchange/plan-request/plan-request'
import { impossibleFormat } from '#exchange/rotation-json'

/** Why there is no plan for a request, and the nearest request for which there is one. */
export function impossiblePlan(
  { json, settings }: PlanRequest,
  {
    problem,
    clash,
    hasTime,
  }: {
    readonly problem: AheadProblem
    readonly clash: readonly AheadClash[]
    readonly hasTime: () => boolean
  },
) {
  const nearest = nearestPlanRequest(json, { seed: settings.seed, hasTime })
  const placed = clash.filter(({ practice, theme }) => practice !== null || theme !== null)
  // Where only a search found it out, what to let go says more than a list of all rules.
  const told = placed.length > 0 || nearest ? placed : clash
  return {
    format: impossibleFormat,
    requirements:
      told.length > 0
        ? told.map((one) => clashJson({ json, problem }, one))
        : [togetherJson(nearest?.letGo ?? [])],
    nearest: nearest?.json ?? null,
  }
}

/** What no arithmetic explains, and only a search found: what to let go then says where to look. */
function togetherJson(letGo: readonly LetGoAhead[]) {
  const why =
    letGo.length > 0
      ? 'No plan keeps all that is asked at once. Without what is named here there is one.'
      : 'No plan keeps all that is asked at once. Let some of it go, or add designs.'
  return requirementJson(letGo, { practice: null, theme: null, why })
}

function clashJson(
  request: { readonly json: PlanRequest['json']; readonly problem: AheadProblem },
  clash: AheadClash,
) {
  const { problem } = request
  const rules = clash.rules.map((rule) => ({ rule, path: placeOfAheadRule(request, rule, clash) }))
  return requirementJson(rules, {
    practice: clash.practice === null ? null : (problem.practices[clash.practice]?.id ?? null),
    theme: clash.theme === null ? null : (problem.themes[clash.theme]?.id ?? null),
    why: sayAheadClash(problem, clash),
  })
}

/** The first rule stands as that of the requirement; `with` are the others that stand against it. */
function requirementJson(
  rules: readonly LetGoAhead[],
  said: { readonly practice: string | null; readonly theme: string | null; readonly why: string },
) {
  const [first, ...others] = rules.map(({ rule, path }) => ({ rule, path: formatPath(path) }))
  return { rule: first?.rule ?? 'offered', path: first?.path ?? 'practices', with: others, ...said }
}
