import type { Day } from '#common/time'
import type { Season, Squad } from '#squad/squad'
import { formatDay } from '#ui/format-day'
import { Choice } from '#ui/page/choice'
import { SectionTitle } from '#ui/page/section-title'
import { paths, withChoices } from '#ui/paths'

type ExportPartProps = {
  readonly squad: Squad
  readonly season: Season
  readonly termId: string | null
  readonly days: { readonly from: Day; readonly to: Day }
  /** Players of whom it changed on these days whether they may be put in goal. */
  readonly keepsChanged: number
}

const files = [
  { what: 'roster', label: 'Roster (CSV)', means: 'who was a member, and when' },
  { what: 'calendar', label: 'Calendar (CSV)', means: 'practices and matches: day, time and place' },
  {
    what: 'icalendar',
    label: 'Calendar (iCalendar)',
    means: 'the same for a calendar program, as it stands now; no child’s name is in it',
  },
  { what: 'attendance', label: 'Attendance (CSV)', means: 'who was there, from when to when' },
  { what: 'book', label: 'Season book (CSV)', means: 'time, turns and even share of each player' },
  {
    what: 'matches',
    label: 'Matches (CSV)',
    means: 'minutes, even share, start, lines and time off, match by match',
  },
  {
    what: 'turns',
    label: 'Turns and match times (CSV)',
    means: 'everything that was written, place by place',
  },
  { what: 'log', label: 'Season log (JSON)', means: 'all of it for another copy of Turnbook' },
  {
    what: 'ahead',
    label: 'Weeks ahead (JSON)',
    means: 'what a plan of the weeks ahead rests on, for the plan command; no child’s name is in it',
  },
] as const

/** Files out: the season or one of its terms. Roster, calendar, attendance and season log can be taken in again. */
export function ExportPart({ squad, season, termId, days, keepsChanged }: ExportPartProps) {
  const choices = [{ id: null, name: season.name }, ...season.terms]
  return (
    <section aria-labelledby="export-title">
      <SectionTitle id="export-title" note={`${formatDay(days.from)} to ${formatDay(days.to)}.`}>
        Take files away
      </SectionTitle>
      <p className="mb-3 max-w-prose text-sm text-soft">
        Most of them hold children’s names. Keep them where only those can read them who may see this page.
      </p>
      <Choice
        label="Season or term"
        options={choices.map(({ id, name }) => ({
          label: name,
          href: withChoices(paths.files(squad.id), { term: id }),
          isChosen: id === termId,
        }))}
      />
      <ul className="mt-4 border-t border-rule">
        {files.map(({ what, label, means }) => (
          <li key={what} className="border-b border-rule">
            {/* Not a page: fetched only when it is asked for. */}
            <a
              href={withChoices(`/squads/${squad.id}/export/${what}`, days)}
              className="tap inline-flex items-center py-2 font-medium"
              download
            >
              {label}
            </a>{' '}
            <span className="text-soft">{means}</span>
          </li>
        ))}
      </ul>
      {keepsChanged > 0 ? (
        <p className="mt-3 max-w-prose text-sm text-soft">
          {keepsSentence(keepsChanged)} The season log has room for one word a player and carries that of its
          last practice or match; read in elsewhere, that word holds for all of its days.
        </p>
      ) : null}
    </section>
  )
}

function keepsSentence(count: number): string {
  return count === 1
    ? 'Whether one of the players may be put in goal changed on one of these days.'
    : `Whether they may be put in goal changed for ${count} players on these days.`
}
