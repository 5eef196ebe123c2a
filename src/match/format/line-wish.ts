/** What a player and its coach have said of a line: nothing, it likes to play there, it is learning it, or not yet. */
export const lineWishes = ['open', 'likes', 'learning', 'notYet'] as const
export type LineWish = (typeof lineWishes)[number]

/** The lines out of goal. Who keeps goal is said elsewhere. */
export const fieldLines = ['back', 'middle', 'forward'] as const
export type FieldLine = (typeof fieldLines)[number]

/** Wishes of one player; a line that is not named is open. */
export type LineWishes = Readonly<Record<FieldLine, LineWish>>

export const noWishes: LineWishes = { back: 'open', middle: 'open', forward: 'open' }
