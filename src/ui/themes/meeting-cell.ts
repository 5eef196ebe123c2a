import type { ThemeMeeting } from '#themes/theme-meetings'
import type { GridCell } from '#ui/charts/theme-grid'
import { wholeMinutes } from '#ui/figures/minutes'
import { words } from '#ui/words'

/** What stands where a player and a theme meet. No meeting: no practice had the theme while the player belonged to the squad. */
export function meetingCell(themeId: string, meeting: ThemeMeeting | undefined): GridCell {
  if (!meeting) return { key: themeId, mark: 'none', text: '', words: 'not practised' }
  const of = `in ${meeting.practicesPlayed} of ${words.practices(meeting.practices)}`
  if (meeting.missed === 'away')
    return { key: themeId, mark: 'unknown', text: 'away', words: words.themeMissed.away }
  if (meeting.missed === 'noTurn')
    return { key: themeId, mark: 'hole', text: 'no turn', words: words.themeMissed.noTurn }
  const minutes = wholeMinutes(meeting.seconds)
  return {
    key: themeId,
    mark: 'met',
    text: `${minutes} min · ${meeting.turns}`,
    words: `${minutes} min, ${words.turns(meeting.turns)}, ${of}`,
  }
}
