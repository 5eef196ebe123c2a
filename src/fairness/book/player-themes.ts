import type { SessionAccount } from '#fairness/account'
import { themeParts } from '#fairness/theme-parts'
import type { PlayerId } from '#squad/player'
import type { Theme } from '#themes/theme'
import { type ThemeLine, themeLines } from '#themes/theme-lines'
import { type ThemeMeeting, themeMeetings } from '#themes/theme-meetings'

/** How a player met the themes, in the programme's order; a theme that none of the practices had is left out. */
export function playerThemes(
  accounts: readonly SessionAccount[],
  { playerId, themes }: { readonly playerId: PlayerId; readonly themes: readonly Theme[] },
): readonly (ThemeLine & { readonly meeting: ThemeMeeting })[] {
  const parts = themeParts(accounts).filter((part) => part.playerId === playerId)
  const meetings = new Map(themeMeetings(parts, themes).map((meeting) => [meeting.themeId, meeting]))
  return themeLines(themes).flatMap((line) => {
    const meeting = meetings.get(line.theme.id)
    return meeting ? [{ ...line, meeting }] : []
  })
}
