import type { ComingWeek } from '#ahead/missing/coming-weeks'
import type { ProgrammeForecast, ThemeForecast } from '#ahead/missing/forecast-themes'
import type { MissingOfPlayers } from '#ahead/missing/missing-of-players'
import { type GridCell, ThemeGrid } from '#ui/charts/theme-grid'
import { formatDay } from '#ui/format-day'
import { LinkButton } from '#ui/page/button'
import { SectionTitle } from '#ui/page/section-title'
import { Table } from '#ui/page/table'
import { paths } from '#ui/paths'
import { MissingPlayers } from '#ui/themes/missing-players'
import { endText, forecastSentence } from '#ui/themes/missing-words'
import { words } from '#ui/words'

type MissingPartProps = {
  readonly squadId: string
  readonly themes: readonly { readonly id: string; readonly name: string }[]
  readonly missing: {
    readonly forecast: ProgrammeForecast
    readonly players: MissingOfPlayers & {
      readonly names: readonly { readonly id: string; readonly name: string }[]
    }
    readonly weeks: readonly ComingWeek[]
  }
}

/** What the term still lacks: the squad by themes and weeks to come, then players theme by theme. */
export function MissingPart({ squadId, themes, missing: { forecast, players, weeks } }: MissingPartProps) {
  if (forecast.themes.length === 0) return null
  const nameOf = new Map(themes.map(({ id, name }) => [id, name]))
  const named = forecast.themes.map((own) => ({ ...own, name: nameOf.get(own.themeId) ?? '' }))
  return (
    <>
      <section aria-labelledby="missing">
        <SectionTitle id="missing" note={forecastSentence(forecast)}>
          What is missing
        </SectionTitle>
        <ForecastTable rows={named} />
        {weeks.length > 0 ? (
          <div className="mt-6 space-y-4">
            <WeeksToCome rows={named} weeks={weeks} />
            <p className="no-print">
              <LinkButton href={paths.ahead(squadId)}>{words.tab.ahead}</LinkButton>
            </p>
          </div>
        ) : null}
      </section>
      <MissingPlayers squadId={squadId} themes={named} {...players} />
    </>
  )
}

type NamedForecast = ThemeForecast & { readonly name: string }

function ForecastTable({ rows }: { readonly rows: readonly NamedForecast[] }) {
  return (
    <Table
      caption="Themes of the programme, in practices"
      hideCaption
      head={[
        { key: 'theme', label: 'Theme' },
        { key: 'ends', label: 'Ends' },
        { key: 'had', label: 'So far', isFigure: true },
        { key: 'planned', label: 'Planned', isFigure: true },
        { key: 'end', label: 'By the end', isFigure: true },
        { key: 'wished', label: 'Wished', isFigure: true },
      ]}
    >
      {rows.map((row) => {
        const text = endText(row)
        return (
          <tr key={row.themeId}>
            <th scope="row">{row.name}</th>
            <td className={text === 'as wished' ? 'text-soft' : 'font-semibold text-accent'}>{text}</td>
            <td className="figure">{row.met}</td>
            <td className="figure">{row.planned}</td>
            <td className="figure">{Math.round(row.atEnd)}</td>
            <td className="figure">{row.dueAtEnd}</td>
          </tr>
        )
      })}
    </Table>
  )
}

function WeeksToCome({
  rows,
  weeks,
}: {
  readonly rows: readonly NamedForecast[]
  readonly weeks: readonly ComingWeek[]
}) {
  return (
    <ThemeGrid
      caption="Weeks to come: practices planned for each theme. A week without a mark has none."
      rowHead="Theme"
      columns={weeks.map(({ week, firstDay }) => ({ key: week, label: formatDay(firstDay, 'short') }))}
      rows={rows.map(({ themeId, name }) => ({
        key: themeId,
        label: name,
        cells: weeks.map((week) => plannedCell(themeId, week)),
      }))}
    />
  )
}

function plannedCell(themeId: string, { week, practices, planned }: ComingWeek): GridCell {
  const count = planned.get(themeId) ?? 0
  if (count === 0)
    return { key: week, mark: 'none', text: '', words: `not planned, of ${words.practices(practices)}` }
  return { key: week, mark: 'met', text: `${count}×`, words: `planned for ${words.practices(count)}` }
}
