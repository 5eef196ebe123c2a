import type { Day } from '#common/time'
import type { ClosedDays } from '#squad/closed-days'
import type { Season } from '#squad/squad'
import { SeasonForm } from '#ui/club/season-form'
import type { SendForm } from '#ui/entry/send-form'
import { formatDays } from '#ui/format-day'
import { Details } from '#ui/page/details'
import { Empty } from '#ui/page/empty'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { ClosedDaysPart } from '#ui/weeks/closed-days-part'

type SeasonsBodyProps = {
  readonly today: Day
  /** The newest first. */
  readonly seasons: readonly Season[]
  /** Days without practice of the whole club, those to come. */
  readonly closed: readonly ClosedDays[]
  readonly save: SendForm
  readonly addClosed: SendForm
  readonly removeClosed: SendForm
}

/** Seasons and their terms, days without practice, and a new season. */
export function SeasonsBody({ today, seasons, closed, ...sends }: SeasonsBodyProps) {
  const { save, addClosed, removeClosed } = sends
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
        <SectionTitle note="Holidays of every squad. A squad’s own stand on its page of weekly practices.">
          Days without practice
        </SectionTitle>
        <ClosedDaysPart closed={closed} squadId={null} add={addClosed} remove={removeClosed} />
      </section>
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
