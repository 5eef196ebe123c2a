import type { SessionAccount } from '#fairness/account'
import { writtenInOrder } from '#fairness/standing'
import type { ThemedPractice } from '#themes/coverage'
import type { ThemeId } from '#themes/theme'
import type { ThemePart } from '#themes/theme-meetings'

/**
 * Written practices with the themes of their turns. `seconds`: playing time of all players together, so a theme in
 * which nobody ever played does not count as met.
 */
export function themedPractices(accounts: readonly SessionAccount[]): readonly ThemedPractice[] {
  return writtenPractices(accounts).map((account) => {
    const seconds = new Map<ThemeId, number>()
    for (const line of account.lines) {
      if (line.themeId === null || line.role === 'rest' || line.seconds === 0) continue
      seconds.set(line.themeId, (seconds.get(line.themeId) ?? 0) + line.seconds)
    }
    const themes = [...seconds].map(([themeId, total]) => ({ themeId, seconds: total }))
    return { sessionId: account.sessionId, day: account.day, themes }
  })
}

/** Every member's part in every theme of every written practice, away or there. */
export function themeParts(accounts: readonly SessionAccount[]): readonly ThemePart[] {
  return writtenPractices(accounts).flatMap((account) => {
    const parts = new Map<string, ThemePart>()
    const themeIds = new Set(account.lines.flatMap((line) => (line.themeId === null ? [] : [line.themeId])))
    for (const { playerId, isMember } of account.presences) {
      if (!isMember) continue
      for (const themeId of themeIds) {
        const none = { turnsPresent: 0, turnsPlayed: 0, secondsPlayed: 0 }
        parts.set(keyOf({ playerId, themeId }), { sessionId: account.sessionId, playerId, themeId, ...none })
      }
    }
    for (const line of account.lines) {
      const part = line.themeId === null ? undefined : parts.get(keyOf({ ...line, themeId: line.themeId }))
      if (!part) continue
      const played = line.role === 'rest' ? { turns: 0, seconds: 0 } : line
      parts.set(keyOf(part), {
        ...part,
        turnsPresent: part.turnsPresent + line.turns,
        turnsPlayed: part.turnsPlayed + played.turns,
        secondsPlayed: part.secondsPlayed + played.seconds,
      })
    }
    return [...parts.values()]
  })
}

function writtenPractices(accounts: readonly SessionAccount[]): readonly SessionAccount[] {
  return writtenInOrder(accounts).filter((account) => account.kind === 'practice')
}

const keyOf = (of: { readonly playerId: string; readonly themeId: string }) =>
  JSON.stringify([of.playerId, of.themeId])
