import { ourThemes, type ThemeKey } from '#themes/our-themes'
import { noRule, type ProgrammeRule } from '#themes/programme-rule'
import type { ThemeId } from '#themes/theme'
import { demoId } from './ids'

export function themeId(key: ThemeKey): ThemeId {
  return demoId(`theme/${key}`)
}

/** The short key of a theme of the demo. */
export function keyOfTheme(id: ThemeId): string {
  return ourThemes.find((theme) => themeId(theme.id) === id)?.id ?? id
}

/** Parents come before their children. */
export const demoThemes = ourThemes.map((theme) => ({
  ...theme,
  id: themeId(theme.id),
  parentId: theme.parentId && themeId(theme.parentId),
}))
export type DemoTheme = (typeof demoThemes)[number]

type Rule = Partial<Omit<ProgrammeRule, 'themeId' | 'afterThemeId'>> & { readonly after?: ThemeKey }

const wishes = (rules: Partial<Record<ThemeKey, Rule>>): readonly ProgrammeRule[] =>
  (Object.entries(rules) as readonly [ThemeKey, Rule][]).map(([key, { after, ...rule }]) => ({
    ...noRule,
    wishedShare: 0,
    ...rule,
    themeId: themeId(key),
    afterThemeId: after ? themeId(after) : null,
  }))

/** Both squads follow one programme. In spring it asks for winning the ball back, and nobody practised it. */
export const autumnProgramme = wishes({
  extraPlayer: { wishedShare: 0.25 },
  findingSpace: { wishedShare: 0.2 },
  finishing: { wishedShare: 0.2 },
  slowingDown: { wishedShare: 0.2 },
  changingOver: { wishedShare: 0.15, firstWeek: 3 },
})
export const springProgramme = wishes({
  extraPlayer: { wishedShare: 0.2 },
  findingSpace: { wishedShare: 0.2 },
  finishing: { wishedShare: 0.15 },
  slowingDown: { wishedShare: 0.15 },
  winningBack: { wishedShare: 0.15, firstWeek: 8, after: 'slowingDown' },
  changingOver: { wishedShare: 0.15, leastWeeksBetween: 2 },
})
