import type { Problem } from '#common/problem'
import { type JsonPath, problemAt } from '#exchange/json-path'
import { planLimits } from '#exchange/plan-request/plan-limits'
import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'
import {
  type Known,
  knownOf,
  tooManyProblems,
  weekProblems,
} from '#exchange/plan-request/plan-value-problems'
import { shareProblems, unknownIdProblems } from '#exchange/value-problems'

type Themes = PlanRequestJson['themes']

/** What is wrong with one theme of a request and with its rules. */
export function themeProblems(themes: Themes, index: number): readonly Problem[] {
  const theme = themes[index]
  if (!theme) return []
  const at: JsonPath = ['themes', index]
  const known = knownOf('themes', themes)
  const { id, parent, share, after, firstWeek, lastWeek, leastWeeksBetween, mostWeeksBetween } = theme
  return [
    ...(parent == null ? [] : unknownIdProblems(parent, [...at, 'parent'], known)),
    ...(leadsBack(themes, id)
      ? [
          problemAt(
            [...at, 'parent'],
            'leads back to the theme itself; another parent, or null, would be right',
          ),
        ]
      : []),
    ...shareProblems(share, [...at, 'share']),
    ...(after == null ? [] : unknownIdProblems(after, [...at, 'after'], known)),
    ...(after === id
      ? [problemAt([...at, 'after'], 'is the theme itself; another theme, or null, would be right')]
      : []),
    ...weeksInOrder(
      { first: firstWeek, last: lastWeek },
      { first: [...at, 'firstWeek'], last: [...at, 'lastWeek'] },
    ),
    ...weeksInOrder(
      { first: leastWeeksBetween, last: mostWeeksBetween },
      { first: [...at, 'leastWeeksBetween'], last: [...at, 'mostWeeksBetween'] },
    ),
  ]
}

export function blockProblems({ blocks = [] }: PlanRequestJson, themes: Known): readonly Problem[] {
  return [
    ...tooManyProblems(blocks.length, planLimits.blocks, ['blocks']),
    ...blocks.flatMap(({ theme, firstWeek, lastWeek }, index) => {
      const at: JsonPath = ['blocks', index]
      return [
        ...unknownIdProblems(theme, [...at, 'theme'], themes),
        ...weeksInOrder(
          { first: firstWeek, last: lastWeek },
          { first: [...at, 'firstWeek'], last: [...at, 'lastWeek'] },
        ),
      ]
    }),
  ]
}

type Week = number | null | undefined

function weeksInOrder(
  { first, last }: { readonly first: Week; readonly last: Week },
  at: { readonly first: JsonPath; readonly last: JsonPath },
): readonly Problem[] {
  const each = [...weekProblems(first, at.first), ...weekProblems(last, at.last)]
  if (each.length > 0 || first == null || last == null || first <= last) return each
  return [problemAt(at.last, `is ${last}; ${first} or more would be right`)]
}

function leadsBack(themes: Themes, id: string): boolean {
  const parentOf = new Map(themes.map((theme) => [theme.id, theme.parent ?? null]))
  let at = parentOf.get(id) ?? null
  for (let steps = 0; at !== null && at !== id && steps <= themes.length; steps += 1)
    at = parentOf.get(at) ?? null
  return at === id
}
