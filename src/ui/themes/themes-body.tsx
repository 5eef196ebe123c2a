import type { Squad, Term } from '#squad/squad'
import type { ThemeMeeting } from '#themes/theme-meetings'
import { ThemeGrid } from '#ui/charts/theme-grid'
import { formatDay } from '#ui/format-day'
import { LinkButton } from '#ui/page/button'
import { Choice } from '#ui/page/choice'
import { Empty } from '#ui/page/empty'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths, withChoices } from '#ui/paths'
import { meetingCell } from '#ui/themes/meeting-cell'
import { type ProgrammeRow, ProgrammeTable } from '#ui/themes/programme-table'
import { type PractisedWeek, weekCell } from '#ui/themes/week-cell'
import { words } from '#ui/words'

type ThemesBodyProps = {
  readonly squad: Squad
  readonly terms: readonly Term[]
  readonly term: Term | null
  readonly written: { readonly held: number; readonly written: number }
  readonly weeks: readonly PractisedWeek[]
  readonly rows: readonly ProgrammeRow[]
  readonly onCourse: { readonly themes: number; readonly of: number }
  readonly players: readonly {
    readonly id: string
    readonly name: string
    readonly meetings: ReadonlyMap<string, ThemeMeeting>
  }[]
}

export function ThemesBody({ squad, terms, term, written, weeks, rows, onCourse, players }: ThemesBodyProps) {
  const met = rows.filter(({ coverage }) => coverage !== null)
  return (
    <>
      {terms.length > 0 ? (
        <Choice
          label="Term"
          options={terms.map(({ id, name }) => ({
            label: name,
            href: withChoices(paths.themes(squad.id), { term: id }),
            isChosen: id === term?.id,
          }))}
        />
      ) : null}
      {rows.length === 0 ? (
        <Empty>
          The club has no themes yet. Add the first below, or take in a season’s log under {words.tab.files}.
        </Empty>
      ) : null}
      {rows.length > 0 && written.written === 0 ? (
        <Empty next={<LinkButton href={paths.sessions(squad.id)}>{words.tab.sessions}</LinkButton>}>
          No practice of this term is written down yet. Once one is, its themes stand here.
        </Empty>
      ) : null}
      {rows.length > 0 ? (
        <section>
          <SectionTitle
            note={`${courseSentence(onCourse)} Planned and met are parts of the practices written down.`}
          >
            The programme
          </SectionTitle>
          <ProgrammeTable rows={rows} practices={written.written} />
          <p className="no-print mt-4">
            <LinkButton href={paths.designs(squad.id)}>Designs by theme</LinkButton>
          </p>
        </section>
      ) : null}
      {written.written > 0 && met.length > 0 ? (
        <>
          <WeeksPart term={term} weeks={weeks} rows={met} />
          <PlayersPart squad={squad} term={term} rows={met} players={players} />
        </>
      ) : null}
    </>
  )
}

type WeeksPartProps = Pick<ThemesBodyProps, 'term' | 'weeks' | 'rows'>

function WeeksPart({ term, weeks, rows }: WeeksPartProps) {
  return (
    <section>
      <SectionTitle note="Shaded: met, in so many practices. Framed ○: due by then and not met. Dashed ?: a practice was not written down. A theme counts for those it stands under.">
        Week by week
      </SectionTitle>
      <ThemeGrid
        caption={`Themes by weeks, ${term?.name ?? ''}`}
        rowHead="Theme"
        columns={weeks.map(({ week, firstDay }) => ({
          key: week,
          label: formatDay(firstDay, 'short'),
        }))}
        rows={rows.map(({ theme, depth, coverage }) => ({
          key: theme.id,
          label: theme.name,
          depth,
          cells: weeks.map((week, index) =>
            weekCell(week, {
              cell: coverage?.weeks[index],
              isPlanned: (coverage?.wishedShare ?? 0) > 0,
            }),
          ),
        }))}
      />
    </section>
  )
}

type PlayersPartProps = Pick<ThemesBodyProps, 'squad' | 'term' | 'rows' | 'players'>

function PlayersPart({ squad, term, rows, players }: PlayersPartProps) {
  return (
    <section>
      <SectionTitle note="Minutes and turns played in each. Framed: was there and didn’t get a turn. Dashed: wasn’t there. Players by name.">
        Players and themes
      </SectionTitle>
      <ThemeGrid
        caption={`Players by themes, ${term?.name ?? ''}: minutes · turns`}
        rowHead="Player"
        columns={rows.map(({ theme }) => ({ key: theme.id, label: theme.name }))}
        rows={players.map(({ id, name, meetings }) => ({
          key: id,
          label: <PageLink href={paths.player(squad.id, { playerId: id })}>{name}</PageLink>,
          cells: rows.map(({ theme }) => meetingCell(theme.id, meetings.get(theme.id))),
        }))}
      />
    </section>
  )
}

/** "4 of 6 planned themes are on course." Nothing due: says so. */
export function courseSentence({ themes, of }: { readonly themes: number; readonly of: number }): string {
  if (of === 0) return 'Nothing is due yet.'
  return `${themes} of ${of} planned ${of === 1 ? 'theme is' : 'themes are'} on course.`
}
