import type { Day } from '#common/time'
import type { Season } from '#squad/squad'
import { SeasonForm } from '#ui/club/season-form'
import type { SendForm } from '#ui/entry/send-form'
import { formatDays } from '#ui/format-day'
import { Details } from '#ui/page/details'
import { Empty } from '#ui/page/empty'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'

type SeasonsBodyProps = {
  readonly today: Day
  /** The newest first. */
  readonly seasons: readonly Season[]
  readonly save: SendForm
}

/** Seasons and their terms, and a new one. */
export function SeasonsBody({ today, seasons, save }: SeasonsBodyProps) {
  return (
    <>
      {seasons.length === 0 ? (
        <Empty>
          There is no season yet. Practices are written inside one, so it comes first. Its terms are what
          reviews and the plan of themes go by.
        </Empty>
      ) : (
        <section>
          <SectionTitle>Seasons</SectionTitle>
          <div className="space-y-4">
            {seasons.map((season) => (
              <SeasonPart key={season.id} season={season} today={today} save={save} />
            ))}
          </div>
          <p className="mt-4">
            Next: <PageLink href={paths.clubSquads()}>the squads</PageLink>
          </p>
        </section>
      )}
      <section>
        <SectionTitle note="A day belongs to one season, and to one term at most. Holidays may lie between terms.">
          New season
        </SectionTitle>
        <SeasonForm season={null} turn={seasons.length} send={save} />
      </section>
    </>
  )
}

function SeasonPart({
  season,
  today,
  save,
}: {
  readonly season: Season
  readonly today: Day
  readonly save: SendForm
}) {
  const isNow = season.firstDay <= today && today <= season.lastDay
  return (
    <div>
      <h3 className="font-semibold">
        {season.name}
        {isNow ? ', this season' : ''}
      </h3>
      <p>{formatDays(season)}</p>
      <ul className="mb-3 list-disc pl-5">
        {season.terms.map((term) => (
          <li key={term.id}>
            {term.name}: {formatDays(term)}
          </li>
        ))}
      </ul>
      <Details summary={`Change ${season.name}`}>
        <SeasonForm season={season} send={save} />
      </Details>
    </div>
  )
}
