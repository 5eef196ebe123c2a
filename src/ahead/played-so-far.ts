import type { Seconds } from '#common/time'
import type { SessionAccount } from '#fairness/account'
import type { PlayerId } from '#squad/player'
import type { Theme, ThemeId } from '#themes/theme'
import { themeAndAbove } from '#themes/theme-tree'

/** Time without waiting: all of it, and in each theme, where a theme counts for those it stands under. */
export type PlayedSoFar = {
  readonly playedSeconds: Seconds
  readonly themeSeconds: ReadonlyMap<ThemeId, Seconds>
}

/** What each player has played in these sessions; who never did is left out. */
export function playedSoFar(
  accounts: readonly SessionAccount[],
  themes: readonly Theme[],
): ReadonlyMap<PlayerId, PlayedSoFar> {
  const played = new Map<PlayerId, { playedSeconds: Seconds; themeSeconds: Map<ThemeId, Seconds> }>()
  for (const { playerId, role, themeId, seconds } of accounts.flatMap(({ lines }) => lines)) {
    if (role === 'rest') continue
    const own = played.get(playerId) ?? { playedSeconds: 0, themeSeconds: new Map() }
    played.set(playerId, own)
    own.playedSeconds += seconds
    if (themeId === null) continue
    for (const above of themeAndAbove(themes, themeId))
      own.themeSeconds.set(above, (own.themeSeconds.get(above) ?? 0) + seconds)
  }
  return played
}
