/** What a theme is about in the book's columns: designs that have much of these serve it well. Empty: anything. */
export type ThemeFocus = {
  readonly roles: readonly ('attack' | 'defend' | 'keep')[]
  readonly situations: readonly ('outnumbering' | 'level' | 'outnumbered')[]
}

export const noFocus: ThemeFocus = { roles: [], situations: [] }
