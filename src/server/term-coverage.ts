import 'server-only'
import { earlierDay } from '#common/earlier-day'
import type { Day } from '#common/time'
import type { ClubTx } from '#data/in-club'
import { listThemedPractices } from '#data/themed-practices'
import { listProgrammes, listThemes } from '#data/themes'
import type { Squad, SquadId, Term } from '#squad/squad'
import { coverProgramme, type ProgrammeCoverage } from '#themes/coverage'

/** How far a squad's programme of a term was met. */
export type CoverageOfTerm = {
  readonly onCourse: ProgrammeCoverage['onCourse']
  /** Themes that were due and never met. */
  readonly neverMet: readonly string[]
}

/** Of every squad asked about, up to today. Three questions to the database, whatever the number of squads. */
export async function loadCoverage(
  tx: ClubTx,
  { squads, term, today }: { readonly squads: readonly Squad[]; readonly term: Term; readonly today: Day },
): Promise<ReadonlyMap<SquadId, CoverageOfTerm>> {
  const squadIds = squads.map(({ id }) => id)
  const days = { firstDay: term.firstDay, lastDay: earlierDay(term.lastDay, today) }
  const themes = await listThemes(tx)
  const programmes = await listProgrammes(tx, { squadIds, termId: term.id })
  const practices = await listThemedPractices(tx, { squadIds, from: days.firstDay, to: days.lastDay })
  return new Map(
    squads.map(({ id }) => {
      const cover = coverProgramme({
        themes,
        programme: programmes.get(id) ?? [],
        term: days,
        practices: practices.filter(({ squadId }) => squadId === id),
      })
      const neverMet = cover.themes.filter((one) => one.duePractices > 0 && one.metPractices === 0)
      const nameOf = (themeId: string) => themes.find((theme) => theme.id === themeId)?.name ?? ''
      return [id, { onCourse: cover.onCourse, neverMet: neverMet.map(({ themeId }) => nameOf(themeId)) }]
    }),
  )
}
