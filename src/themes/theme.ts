export type ThemeId = string

/** A theme of the programme; themes may stand under a parent. */
export type Theme = {
  readonly id: ThemeId
  readonly name: string
  readonly parentId: ThemeId | null
  /** Place among its siblings. */
  readonly order: number
}

/** What a squad's programme wishes for a term. `wishedShare` 0-1 of the term's practices. */
export type ProgrammeEntry = { readonly themeId: ThemeId; readonly wishedShare: number }
