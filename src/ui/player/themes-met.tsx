import type { ThemeMeeting } from '#themes/theme-meetings'
import { wholeMinutes } from '#ui/figures/minutes'
import { Turns } from '#ui/figures/turns'
import { Table } from '#ui/page/table'
import { counted } from '#ui/plural'
import { words } from '#ui/words'

export type NamedMeeting = {
  readonly themeName: string
  readonly depth: number
  readonly meeting: ThemeMeeting
}

/** Themes the squad had while the player belonged to it: played, or missed and why. */
export function ThemesMet({ meetings }: { readonly meetings: readonly NamedMeeting[] }) {
  return (
    <Table
      caption="Themes met and missed"
      hideCaption
      head={[
        { key: 'theme', label: 'Theme' },
        { key: 'met', label: 'Met' },
        { key: 'practices', label: 'Practices played in' },
        { key: 'time', label: 'Time in it' },
      ]}
    >
      {meetings.map(({ themeName, depth, meeting }) => (
        <tr key={meeting.themeId}>
          <th scope="row">
            <span style={{ paddingLeft: `${depth * 1.25}rem` }}>{themeName}</span>
          </th>
          <td className={meeting.missed ? 'font-semibold text-accent' : undefined}>{metText(meeting)}</td>
          <td>
            {meeting.practicesPlayed} of {counted(meeting.practices, 'practice')}
          </td>
          <td className="whitespace-nowrap">
            <Turns minutes={wholeMinutes(meeting.seconds)} turns={meeting.turns} />
          </td>
        </tr>
      ))}
    </Table>
  )
}

export function metText({ missed }: Pick<ThemeMeeting, 'missed'>): string {
  if (missed === null) return 'played'
  return missed === 'away' ? words.themeMissed.away : words.themeMissed.noTurn
}
