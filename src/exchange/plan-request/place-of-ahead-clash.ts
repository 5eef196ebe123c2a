import type { AheadClash } from '#ahead/clash'
import type { AheadProblem } from '#ahead/problem'
import type { AheadRuleName } from '#ahead/rule'
import { themeWithAbove } from '#ahead/theme-with-above'
import type { JsonPath } from '#exchange/json-path'
import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'

type Request = { readonly problem: AheadProblem; readonly json: PlanRequestJson }

/** Where in a request a rule of a clash stands. */
export function placeOfAheadRule(
  { problem, json }: Request,
  rule: AheadRuleName,
  { practice, theme }: Pick<AheadClash, 'practice' | 'theme'>,
): JsonPath {
  const planned = practice === null ? undefined : problem.practices[practice]
  const at = json.practices.findIndex(({ id }) => id === planned?.id)
  const practicePath: JsonPath = at < 0 ? ['practices'] : ['practices', at]
  switch (rule) {
    case 'offered':
      return practicePath
    case 'held':
      return at < 0 ? practicePath : [...practicePath, 'held']
    case 'designRest':
      return ['designRest']
    case 'block': {
      const block = (json.blocks ?? []).findIndex(
        (own) => planned === undefined || (own.firstWeek <= planned.week && planned.week <= own.lastWeek),
      )
      return block < 0 ? ['blocks'] : ['blocks', block]
    }
    default: {
      // The rule may be that of a theme above.
      const line = theme === null ? [] : themeWithAbove(problem.themes, theme)
      const own = line.find((index) => json.themes[index]?.[rule] != null) ?? theme
      return own === null ? ['themes'] : ['themes', own, rule]
    }
  }
}
