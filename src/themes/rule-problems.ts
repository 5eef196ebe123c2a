import { lineFrom } from '#common/line-from'
import type { Problem } from '#common/problem'
import type { ProgrammeBlock, ProgrammeRule } from '#themes/programme-rule'
import type { ThemeId } from '#themes/theme'

type Known = {
  /** Weeks that the term has. */
  readonly weeks: number
  readonly nameOf: (themeId: ThemeId) => string
}

/** Why rules of a programme cannot stand, each with the field it belongs to (`first-` and the theme's id, and so on). */
export function problemsOfRules(rules: readonly ProgrammeRule[], known: Known): readonly Problem[] {
  return rules.flatMap((rule) => [
    ...weekProblems(rule, { first: `first-${rule.themeId}`, last: `last-${rule.themeId}`, ...known }),
    ...betweenProblems(rule),
    ...afterProblems(rule, rules, known),
  ])
}

/** Why blocks cannot stand; `index` of a block is its place in the list. Weeks kept for two themes leave no practice that is both. */
export function problemsOfBlocks(blocks: readonly ProgrammeBlock[], known: Known): readonly Problem[] {
  return blocks.flatMap((block, index) => [
    ...weekProblems(block, { first: `blockFirst-${index}`, last: `blockLast-${index}`, ...known }),
    ...blocks
      .slice(0, index)
      .filter(
        (other) =>
          other.themeId !== block.themeId &&
          other.firstWeek <= block.lastWeek &&
          block.firstWeek <= other.lastWeek,
      )
      .map((other) => ({
        path: `blockFirst-${index}`,
        message: `lies in weeks ${other.firstWeek} to ${other.lastWeek}, which are kept for ${known.nameOf(other.themeId)}; choose weeks that do not meet`,
      })),
  ])
}

function weekProblems(
  { firstWeek, lastWeek }: Pick<ProgrammeRule, 'firstWeek' | 'lastWeek'>,
  { first, last, weeks }: { readonly first: string; readonly last: string; readonly weeks: number },
): readonly Problem[] {
  const beyond = [
    { path: first, week: firstWeek },
    { path: last, week: lastWeek },
  ].flatMap(({ path, week }) =>
    week !== null && (week < 1 || week > weeks)
      ? [{ path, message: `is week ${week}; this term has weeks 1 to ${weeks}` }]
      : [],
  )
  if (beyond.length > 0 || firstWeek === null || lastWeek === null || firstWeek <= lastWeek) return beyond
  return [
    {
      path: last,
      message: `is week ${lastWeek}, before the first one, ${firstWeek}; write ${firstWeek} or a later one`,
    },
  ]
}

function betweenProblems({
  themeId,
  leastWeeksBetween: least,
  mostWeeksBetween: most,
}: ProgrammeRule): readonly Problem[] {
  if (least === null || most === null || least <= most) return []
  const message = `is fewer than ${least}, the weeks it stays away at least; write ${least} or more`
  return [{ path: `most-${themeId}`, message }]
}

function afterProblems(
  rule: ProgrammeRule,
  rules: readonly ProgrammeRule[],
  { nameOf }: Known,
): readonly Problem[] {
  if (rule.afterThemeId === null) return []
  const path = `after-${rule.themeId}`
  if (rule.afterThemeId === rule.themeId)
    return [{ path, message: 'is the theme itself; choose another one, or none' }]
  const afterOf = new Map(rules.map((one) => [one.themeId, one.afterThemeId]))
  if (!lineFrom(rule.afterThemeId, (id) => afterOf.get(id) ?? null).includes(rule.themeId)) return []
  const message = `${nameOf(rule.afterThemeId)} waits for ${nameOf(rule.themeId)} in turn, so neither could ever begin; take one of the two away`
  return [{ path, message }]
}
