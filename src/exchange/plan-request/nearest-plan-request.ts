import { problemOfAhead } from '#ahead/problem-of-request'
import { quickAhead } from '#ahead/quick-plan'
import type { AheadRuleName } from '#ahead/rule'
import type { JsonPath } from '#exchange/json-path'
import { leastLetGo, mostSingly } from '#exchange/least-let-go'
import { aheadRequestOf } from '#exchange/plan-request/plan-request'
import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'

/** A rule of a request that is let go, and where it stands; many of one kind together where their list does. */
export type LetGoAhead = { readonly rule: AheadRuleName; readonly path: JsonPath }

type Loosening = LetGoAhead & { readonly loosen: (json: PlanRequestJson) => PlanRequestJson }

/**
 * The request with as little let go as makes a plan possible, and what that is; null where none was found. What is dearest
 * is taken back first, so that the rest between two practices of a design goes before a block, and a practice only where
 * nothing can be played in it. Grounds, times, who comes and which design serves what are facts, and stay.
 */
export function nearestPlanRequest(
  json: PlanRequestJson,
  { seed, hasTime }: { readonly seed: number; readonly hasTime: () => boolean },
): { readonly json: PlanRequestJson; readonly letGo: readonly LetGoAhead[] } | null {
  const works = (kept: readonly Loosening[]) => isPossible(loosened(json, kept), seed)
  const needed = leastLetGo(loosenings(json), { works, hasTime })
  return needed && { json: loosened(json, needed), letGo: needed.map(({ rule, path }) => ({ rule, path })) }
}

function isPossible(json: PlanRequestJson, seed: number): boolean {
  if (json.practices.length === 0) return false
  const problem = problemOfAhead(aheadRequestOf(json))
  return problem.practices.length > 0 && quickAhead(problem, { seed, steps: 0 }) !== null
}

function loosened(json: PlanRequestJson, by: readonly Loosening[]): PlanRequestJson {
  return by.reduce((request, { loosen }) => loosen(request), json)
}

/** The dearest first. */
function loosenings(json: PlanRequestJson): readonly Loosening[] {
  const { blocks = [], practices, designRest = 0 } = json
  return [
    ...singly(withoutOffers(json), { rule: 'offered', path: ['practices'] }, (gone) => {
      const ids = idsOf(practices, gone)
      return (request) => ({
        ...request,
        practices: request.practices.filter(({ id }) => !ids.has(id)),
      })
    }),
    ...singly(allPlaces(blocks), { rule: 'block', path: ['blocks'] }, (gone) => (request) => ({
      ...request,
      blocks: (request.blocks ?? []).filter((block) => !gone.has(blocks.indexOf(block))),
    })),
    ...ofThemes(json, 'after'),
    ...ofThemes(json, 'firstWeek'),
    ...ofThemes(json, 'lastWeek'),
    ...singly(
      allPlaces(practices).filter((index) => practices[index]?.held),
      { rule: 'held', path: ['practices'], last: 'held' },
      (gone) => {
        const ids = idsOf(practices, gone)
        return (request) => ({
          ...request,
          practices: request.practices.map((own) => (ids.has(own.id) ? { ...own, held: null } : own)),
        })
      },
    ),
    ...ofThemes(json, 'mostWeeksBetween'),
    ...ofThemes(json, 'leastWeeksBetween'),
    ...(designRest > 0
      ? [
          {
            rule: 'designRest',
            path: ['designRest'],
            loosen: (request) => ({ ...request, designRest: 0 }),
          } satisfies Loosening,
        ]
      : []),
  ]
}

type ThemeRule = 'after' | 'firstWeek' | 'lastWeek' | 'leastWeeksBetween' | 'mostWeeksBetween'

function ofThemes({ themes }: PlanRequestJson, rule: ThemeRule): readonly Loosening[] {
  const said = allPlaces(themes).filter((index) => themes[index]?.[rule] != null)
  return singly(said, { rule, path: ['themes'], last: rule }, (gone) => (request) => ({
    ...request,
    themes: request.themes.map((own, index) => (gone.has(index) ? { ...own, [rule]: null } : own)),
  }))
}

/** Each of some places of a list let go by itself, or all at once where they are many. */
function singly(
  places: readonly number[],
  { rule, path, last }: LetGoAhead & { readonly last?: string },
  loosen: (gone: ReadonlySet<number>) => Loosening['loosen'],
): readonly Loosening[] {
  if (places.length > mostSingly) return [{ rule, path, loosen: loosen(new Set(places)) }]
  return places.map((index) => ({
    rule,
    path: [...path, index, ...(last === undefined ? [] : [last])],
    loosen: loosen(new Set([index])),
  }))
}

/** A practice keeps its id where others before it are let go. */
function idsOf(practices: PlanRequestJson['practices'], places: ReadonlySet<number>): ReadonlySet<string> {
  return new Set(practices.flatMap(({ id }, index) => (places.has(index) ? [id] : [])))
}

function allPlaces(list: readonly unknown[]): readonly number[] {
  return list.map((_, index) => index)
}

/** Practices for which no design serves, fits the ground and those expected, whatever the rules. */
function withoutOffers(json: PlanRequestJson): readonly number[] {
  const { practices } = problemOfAhead(aheadRequestOf(json))
  const ids = new Set(practices.flatMap(({ id, offers }) => (offers.length === 0 ? [id] : [])))
  return allPlaces(json.practices).filter((index) => ids.has(json.practices[index]?.id ?? ''))
}
