import type { Day } from '#common/time'
import type { KnownPlayer } from '#exchange/players/match-player'
import type { DaySpan } from '#exchange/table/date-form'
import type { PlayerId } from '#squad/player'
import type { Theme, ThemeId } from '#themes/theme'

/** What a season log is compared with. */
export type LogBook = {
  /** Of the squad. */
  readonly players: readonly KnownPlayer[]
  /** Of the club. */
  readonly themes: readonly (Theme & { readonly code: string | null })[]
  /** Of the squad, cancelled ones too. */
  readonly sessions: readonly { readonly id: string; readonly code: string | null }[]
  readonly seasons: readonly DaySpan[]
}

/** Who an id of the log is: a player of the book, or one to enter. */
export type LogPlayer =
  | { readonly kind: 'known'; readonly code: string; readonly playerId: PlayerId }
  | {
      readonly kind: 'new'
      readonly code: string
      readonly name: string
      readonly keeps: boolean
      readonly firstDay: Day
    }

export type LogTheme =
  | { readonly kind: 'known'; readonly code: string; readonly themeId: ThemeId }
  | { readonly kind: 'new'; readonly code: string; readonly name: string; readonly parentCode: string | null }

export type LogPlan = { readonly players: readonly LogPlayer[]; readonly themes: readonly LogTheme[] }
