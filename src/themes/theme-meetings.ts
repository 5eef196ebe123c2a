import type { PlayerId } from '#squad/player'
import type { Theme, ThemeId } from '#themes/theme'
import { themeAndAbove } from '#themes/theme-tree'

/** A player's part in one theme in one practice of its squad; zeros when it was away. */
export type ThemePart = {
  readonly sessionId: string
  readonly playerId: PlayerId
  readonly themeId: ThemeId
  readonly turnsPresent: number
  readonly turnsPlayed: number
  readonly secondsPlayed: number
}

export type ThemeMeeting = {
  readonly playerId: PlayerId
  readonly themeId: ThemeId
  /** `away`: never there when it was on; `noTurn`: there, and got no turn. Null when it was met. */
  readonly missed: 'away' | 'noTurn' | null
  /** Practices of the squad with the theme, those it was there for, and those it played it in. */
  readonly practices: number
  readonly practicesThere: number
  readonly practicesPlayed: number
  readonly turns: number
  readonly seconds: number
}

/**
 * Players × themes, so that holes can be seen: one meeting for every player and theme that any part names.
 * In order of the parts. Themes count for those they stand under.
 */
export function themeMeetings(
  parts: readonly ThemePart[],
  themes: readonly Theme[],
): readonly ThemeMeeting[] {
  const practices = new Map<string, ThemePart>()
  for (const part of parts) {
    for (const themeId of themeAndAbove(themes, part.themeId)) {
      const key = JSON.stringify([part.playerId, themeId, part.sessionId])
      const before = practices.get(key)
      practices.set(key, {
        ...part,
        themeId,
        turnsPresent: part.turnsPresent + (before?.turnsPresent ?? 0),
        turnsPlayed: part.turnsPlayed + (before?.turnsPlayed ?? 0),
        secondsPlayed: part.secondsPlayed + (before?.secondsPlayed ?? 0),
      })
    }
  }
  const meetings = new Map<string, ThemeMeeting>()
  for (const part of practices.values()) {
    const key = JSON.stringify([part.playerId, part.themeId])
    meetings.set(key, addPart(meetings.get(key), part))
  }
  return [...meetings.values()]
}

function addPart(before: ThemeMeeting | undefined, part: ThemePart): ThemeMeeting {
  const practicesThere = (before?.practicesThere ?? 0) + (part.turnsPresent > 0 ? 1 : 0)
  const practicesPlayed = (before?.practicesPlayed ?? 0) + (part.turnsPlayed > 0 ? 1 : 0)
  return {
    playerId: part.playerId,
    themeId: part.themeId,
    missed: practicesPlayed > 0 ? null : practicesThere > 0 ? 'noTurn' : 'away',
    practices: (before?.practices ?? 0) + 1,
    practicesThere,
    practicesPlayed,
    turns: (before?.turns ?? 0) + part.turnsPlayed,
    seconds: (before?.seconds ?? 0) + part.secondsPlayed,
  }
}
