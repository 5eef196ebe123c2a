import type { Day, Seconds } from '#common/time'
import type { DesignId, DesignRound } from '#practice/design'
import type { ColumnSeconds } from '#rotation/problem'
import type { PlayerId } from '#squad/player'
import type { ProgrammeBlock, ProgrammeRule } from '#themes/programme-rule'
import type { Theme, ThemeId } from '#themes/theme'

/** Both days belong to it. */
export type DaySpan = { readonly firstDay: Day; readonly lastDay: Day }

/** Metres; either way round. */
export type GroundSize = { readonly lengthM: number; readonly widthM: number }

export type RequestedPractice = {
  readonly id: string
  readonly day: Day
  /** Null: as long as any design takes. */
  readonly lengthSeconds: Seconds | null
  /** Null: large enough for any. */
  readonly ground: GroundSize | null
  readonly held: { readonly themeId: ThemeId; readonly designId: DesignId | null } | null
}

export type RequestedDesign = {
  readonly id: DesignId
  readonly name: string
  /** The themes that it serves; those above them are met with them. */
  readonly themeIds: readonly ThemeId[]
  readonly lengthM: number
  readonly widthM: number
  readonly rounds: readonly Pick<
    DesignRound,
    'turnCount' | 'turnSeconds' | 'gapSeconds' | 'stations' | 'isFreeGame'
  >[]
}

/** A player with its record. Figures are of practices of the squad in this season, but those of themes and attendance of this term. */
export type RequestedPlayer = {
  readonly id: PlayerId
  readonly keeps: boolean
  /** Practices it came to, of those held while it belonged to the squad. */
  readonly came: number
  readonly held: number
  readonly away: readonly DaySpan[]
  /** Share − fair share. */
  readonly gap: ColumnSeconds
  readonly fair: ColumnSeconds
  readonly playedSeconds: number
  /** Time played by theme, themes under it included. */
  readonly themeSeconds: ReadonlyMap<ThemeId, number>
}

/** What the page and the command ask for: a term's practices to come, in the words of the trade. */
export type AheadRequest = {
  readonly term: DaySpan
  readonly policy: { readonly toleranceSeconds: Seconds; readonly toleranceShare: number }
  readonly practices: readonly RequestedPractice[]
  /** Days without practice: practices on them are left out. */
  readonly closed: readonly DaySpan[]
  readonly themes: readonly Theme[]
  readonly programme: readonly ProgrammeRule[]
  readonly blocks: readonly ProgrammeBlock[]
  readonly designs: readonly RequestedDesign[]
  readonly met: readonly {
    readonly day: Day
    readonly themeIds: readonly ThemeId[]
    readonly designId: DesignId | null
  }[]
  readonly players: readonly RequestedPlayer[]
  readonly designRest: number
  readonly gentle: { readonly least: number; readonly most: number }
}
