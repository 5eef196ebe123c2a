import type { Season, Squad } from '#squad/squad'
import { ClubCard } from '#ui/club/club-card'
import { ClubForm } from '#ui/club/club-form'
import { FirstSteps } from '#ui/club/first-steps'
import { GoalsForm } from '#ui/club/goals-form'
import { OursForm } from '#ui/club/ours-form'
import type { SendForm } from '#ui/entry/send-form'
import { formatDays } from '#ui/format-day'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { listed } from '#ui/plural'

type Arranged = Squad & { readonly coachNames: readonly string[]; readonly members: number }

type ClubBodyProps = {
  readonly name: string
  readonly timeZone: string
  readonly timeZones: readonly string[]
  readonly season: Season | null
  readonly squads: readonly Arranged[]
  readonly canTakeOurs: boolean
  readonly canManagePeople: boolean
  readonly canAnswerRequests: boolean
  readonly canSeeRecord: boolean
  readonly countsGoals: boolean
  readonly change: SendForm
  readonly countGoals: SendForm
  readonly takeOurs: SendForm
}

/** The parts of a club, what a new one still needs, and its name. */
export function ClubBody(props: ClubBodyProps) {
  const { season, squads, canManagePeople, canAnswerRequests, canSeeRecord } = props
  return (
    <>
      <FirstSteps season={season} squads={squads} canManagePeople={canManagePeople} />
      <OursForm isOffered={props.canTakeOurs} send={props.takeOurs} />
      <section aria-label="Parts of the club">
        <ul className="grid gap-3 sm:grid-cols-2 lg:grid-cols-3">
          {canManagePeople ? (
            <ClubCard href={paths.clubPeople()} title="People">
              Coaches, helpers, parents and guardians: who may see what, and how they sign in.
            </ClubCard>
          ) : null}
          <ClubCard href={paths.clubSeasons()} title="Seasons and terms">
            {season ? `${season.name}: ${formatDays(season)}.` : 'No season yet.'}
          </ClubCard>
          <ClubCard href={paths.clubSquads()} title="Squads">
            {squads.length > 0 ? `${listed(squads.map((squad) => squad.name))}.` : 'No squad yet.'}
          </ClubCard>
          <ClubCard href={paths.clubFormats()} title="Match formats">
            How many a side, how long, what everyone is promised; and which squad plays what.
          </ClubCard>
          {canAnswerRequests ? (
            <ClubCard href={paths.clubRequests()} title="What families ask">
              Copies, corrections and erasures; whom families ask; how long names are kept.
            </ClubCard>
          ) : null}
          {canSeeRecord ? (
            <ClubCard href={paths.clubRecord()} title="Changes and looks">
              Who changed what, and which adult looked at a child’s page.
            </ClubCard>
          ) : null}
        </ul>
      </section>
      <section>
        <SectionTitle note="The club’s day begins and ends by this clock.">Name and clock</SectionTitle>
        <ClubForm
          name={props.name}
          timeZone={props.timeZone}
          timeZones={props.timeZones}
          send={props.change}
        />
      </section>
      <GoalsForm countsGoals={props.countsGoals} send={props.countGoals} />
    </>
  )
}
