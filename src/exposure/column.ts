import type { ThemeId } from '#themes/theme'

export const roles = ['attack', 'defend', 'keep', 'rest'] as const
export type Role = (typeof roles)[number]

/** As the player's own side has it; keepers are not counted. */
export const situations = ['outnumbering', 'level', 'outnumbered'] as const
export type Situation = (typeof situations)[number]

/** Where on the pitch in a match; the middle is split between attack and defence by the policy. */
export type MatchLine = 'back' | 'middle' | 'forward'

/** One column of the book for one theme. `situation` null: keep, rest, matches, and stations without opponents. */
export type Column = {
  readonly role: Role
  readonly situation: Situation | null
  readonly themeId: ThemeId | null
  readonly line: MatchLine | null
}
