import type { Theme } from '#themes/theme'
import type { ThemeFocus } from '#themes/theme-focus'

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
  readonly focus: ThemeFocus
}

const about = (roles: ThemeFocus['roles'], situations: ThemeFocus['situations'] = []): ThemeFocus => ({
  roles,
  situations,
})

const theme = (
  id: ThemeKey,
  order: number,
  name: string,
  parts: Pick<OurTheme, 'asks' | 'focus'> & { readonly parentId?: ThemeKey },
): OurTheme => ({ id, name, order, asks: parts.asks, focus: parts.focus, parentId: parts.parentId ?? null })

/** Our own list of themes, which a club may begin with. Parents come before their children. */
export const ourThemes: readonly OurTheme[] = [
  theme('attacking', 1, 'With the ball', { asks: 'Going forward together.', focus: about(['attack']) }),
  theme('extraPlayer', 1, 'Using the extra player', {
    asks: 'Draw one defender, then find the free one.',
    focus: about(['attack'], ['outnumbering']),
    parentId: 'attacking',
  }),
  theme('findingSpace', 2, 'Finding space', {
    asks: 'Use the whole width; move before the ball comes.',
    focus: about(['attack'], ['outnumbering', 'level']),
    parentId: 'attacking',
  }),
  theme('finishing', 3, 'Finishing', {
    asks: 'Arrive early, look once, finish first time.',
    focus: about(['attack', 'keep']),
    parentId: 'attacking',
  }),
  theme('defending', 2, 'Without the ball', {
    asks: 'Keeping the way to goal closed together.',
    focus: about(['defend']),
  }),
  theme('slowingDown', 1, 'Slowing them down', {
    asks: 'The nearest holds up, the next one covers.',
    focus: about(['defend'], ['level', 'outnumbered']),
    parentId: 'defending',
  }),
  theme('winningBack', 2, 'Winning it back together', {
    asks: 'Close in as a group the moment it is lost.',
    focus: about(['defend'], ['outnumbering']),
    parentId: 'defending',
  }),
  theme('changingOver', 3, 'Changing over', {
    asks: 'Won or lost: the next three seconds decide.',
    focus: about(['attack', 'defend']),
  }),
]
