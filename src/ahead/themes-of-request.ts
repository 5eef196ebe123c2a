import type { AheadTheme } from '#ahead/problem'
import type { AheadRequest } from '#ahead/request'
import { noRule } from '#themes/programme-rule'
import { themeAndAbove } from '#themes/theme-tree'

/** The club's themes with what the programme says of them, in the order of the request. */
export function themesOfRequest({ themes, programme }: AheadRequest): readonly AheadTheme[] {
  const at = new Map(themes.map(({ id }, index) => [id, index]))
  const rules = new Map(programme.map((rule) => [rule.themeId, rule]))
  return themes.map(({ id, name, parentId }) => {
    const rule = rules.get(id) ?? { wishedShare: 0, ...noRule }
    return {
      id,
      name,
      parent: parentId === null ? null : (at.get(parentId) ?? null),
      wishedShare: rule.wishedShare,
      firstWeek: rule.firstWeek,
      lastWeek: rule.lastWeek,
      after: rule.afterThemeId === null ? null : (at.get(rule.afterThemeId) ?? null),
      leastWeeksBetween: rule.leastWeeksBetween,
      mostWeeksBetween: rule.mostWeeksBetween,
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
