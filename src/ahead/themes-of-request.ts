import type { AheadTheme } from '#ahead/problem'
import type { AheadRequest } from '#ahead/request'
import { themeAndAbove } from '#themes/theme-tree'

/** The club's themes with what the programme says of them, in the order of the request. */
export function themesOfRequest({ themes, programme }: AheadRequest): readonly AheadTheme[] {
  const at = new Map(themes.map(({ id }, index) => [id, index]))
  const rules = new Map(programme.map((rule) => [rule.themeId, rule]))
  return themes.map(({ id, name, parentId }) => {
    const rule = rules.get(id)
    return {
      id,
      name,
      parent: parentId === null ? null : (at.get(parentId) ?? null),
      wishedShare: rule?.wishedShare ?? 0,
      firstWeek: rule?.firstWeek ?? null,
      lastWeek: rule?.lastWeek ?? null,
      after: rule?.afterThemeId ? (at.get(rule.afterThemeId) ?? null) : null,
      leastWeeksBetween: rule?.leastWeeksBetween ?? null,
      mostWeeksBetween: rule?.mostWeeksBetween ?? null,
    }
  })
}

/**
 * Which themes may be chosen for a practice: those of the programme and its blocks, those they build on, and all under
 * them. Without a programme: all.
 */
export function askedThemes({ themes, programme, blocks }: AheadRequest): readonly boolean[] {
  const named = new Set([
    ...programme.flatMap(({ themeId, afterThemeId }) => (afterThemeId ? [themeId, afterThemeId] : [themeId])),
    ...blocks.map(({ themeId }) => themeId),
  ])
  const isAny = !themes.some(({ id }) => named.has(id))
  return themes.map(({ id }) => isAny || themeAndAbove(themes, id).some((own) => named.has(own)))
}
