import type { Day } from '#common/time'
import type { ThemeId } from '#themes/theme'

/** A practice still to come in a term; `themeId` null: no theme is planned for it. */
export type ComingPractice = { readonly id: string; readonly day: Day; readonly themeId: ThemeId | null }
