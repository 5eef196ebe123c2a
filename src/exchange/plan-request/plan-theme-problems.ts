import { leadsBack } from '#common/line-from'
import type { Problem } from '#common/problem'
import { type JsonPath, problemAt } from '#exchange/json-path'
import { planLimits } from '#exchange/plan-request/plan-limits'
import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'
import { wholeBetweenProblems } from '#exchange/plan-request/plan-value-problems'
import { type KnownIds, shareProblems, tooManyProblems, unknownIdProblems } from '#exchange/value-problems'

type ParentOf = ReadonlyMap<string, string | null>

/** What is wrong with the themes of a request and with their rules. */
export function themesProblems({ themes }: PlanRequestJson, known: KnownIds): readonly Problem[] {
  const parentOf = new Map(themes.map(({ id, parent = null }) => [id, parent]))
  return themes.flatMap((theme, index) => themeProblems(theme, { known, parentOf }, ['themes', index]))
}

function themeProblems(
  theme: PlanRequestJson['themes'][number],
  { known, parentOf }: { readonly known: KnownIds; readonly parentOf: ParentOf },
  at: JsonPath,
): readonly Problem[] {
  const { id, parent, share, after, firstWeek, lastWeek, leastWeeksBetween, mostWeeksBetween } = theme
  return [
    ...(parent == null ? [] : unknownIdProblems(parent, [...at, 'parent'], known)),
    ...(leadsBack(id, (own) => parentOf.get(own) ?? null)
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

export function blockProblems({ blocks = [] }: PlanRequestJson, themes: KnownIds): readonly Problem[] {
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

const weeks = { least: 1, most: planLimits.weeks, what: 'weeks' } as const

function weeksInOrder(
  { first, last }: { readonly first: Week; readonly last: Week },
  at: { readonly first: JsonPath; readonly last: JsonPath },
): readonly Problem[] {
  const each = [
    ...wholeBetweenProblems(first, weeks, at.first),
    ...wholeBetweenProblems(last, weeks, at.last),
  ]
  if (each.length > 0 || first == null || last == null || first <= last) return each
  return [problemAt(at.last, `is ${last}; ${first} or more would be right`)]
}
