import type { ProgrammeEntry, Theme, ThemeId } from '#themes/theme'
import { demoId } from './ids'

const themeKeys = [
  'attacking',
  'extraPlayer',
  'findingSpace',
  'finishing',
  'defending',
  'slowingDown',
  'winningBack',
  'changingOver',
] as const
export type ThemeKey = (typeof themeKeys)[number]

export function themeId(key: ThemeKey): ThemeId {
  return demoId(`theme/${key}`)
}

/** The short key of a theme of the demo. */
export function keyOfTheme(id: ThemeId): string {
  return themeKeys.find((key) => themeId(key) === id) ?? id
}

export type DemoTheme = Theme & {
  /** What the theme asks for, in a sentence for coaches. */
  readonly asks: string
}

const theme = (key: ThemeKey, order: number, name: string, asks: string, parent?: ThemeKey): DemoTheme => ({
  id: themeId(key),
  name,
  parentId: parent ? themeId(parent) : null,
  order,
  asks,
})

/** Parents come before their children. */
export const demoThemes: readonly DemoTheme[] = [
  theme('attacking', 1, 'With the ball', 'Going forward together.'),
  theme(
    'extraPlayer',
    1,
    'Using the extra player',
    'Draw one defender, then find the free one.',
    'attacking',
  ),
  theme('findingSpace', 2, 'Finding space', 'Use the whole width; move before the ball comes.', 'attacking'),
  theme('finishing', 3, 'Finishing', 'Arrive early, look once, finish first time.', 'attacking'),
  theme('defending', 2, 'Without the ball', 'Keeping the way to goal closed together.'),
  theme('slowingDown', 1, 'Slowing them down', 'The nearest holds up, the next one covers.', 'defending'),
  theme(
    'winningBack',
    2,
    'Winning it back together',
    'Close in as a group the moment it is lost.',
    'defending',
  ),
  theme('changingOver', 3, 'Changing over', 'Won or lost: the next three seconds decide.'),
]

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
