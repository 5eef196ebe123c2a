import { ourThemes, type ThemeKey } from '#themes/our-themes'
import type { ProgrammeEntry, ThemeId } from '#themes/theme'
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

const wishes = (shares: Partial<Record<ThemeKey, number>>): readonly ProgrammeEntry[] =>
  (Object.entries(shares) as readonly [ThemeKey, number][]).map(([key, wishedShare]) => ({
    themeId: themeId(key),
    wishedShare,
  }))

/** Both squads follow one programme. In spring it asks for winning the ball back, and nobody practised it. */
export const autumnProgramme = wishes({
  extraPlayer: 0.25,
  findingSpace: 0.2,
  finishing: 0.2,
  slowingDown: 0.2,
  changingOver: 0.15,
})
export const springProgramme = wishes({
  extraPlayer: 0.2,
  findingSpace: 0.2,
  finishing: 0.15,
  slowingDown: 0.15,
  winningBack: 0.15,
  changingOver: 0.15,
})
