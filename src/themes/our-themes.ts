import type { Theme } from '#themes/theme'

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

/** A theme whose id is its key: who takes it into a club gives it an id there. */
export type OurTheme = Omit<Theme, 'id' | 'parentId'> & {
  readonly id: ThemeKey
  readonly parentId: ThemeKey | null
  /** What the theme asks for, in a sentence for coaches. */
  readonly asks: string
}

const theme = (
  id: ThemeKey,
  order: number,
  name: string,
  asks: string,
  parentId: ThemeKey | null = null,
): OurTheme => ({ id, name, parentId, order, asks })

/** Our own list of themes, which a club may begin with. Parents come before their children. */
export const ourThemes: readonly OurTheme[] = [
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
