import type { Squad } from '#squad/squad'
import { SquadForm } from '#ui/club/squad-form'
import type { SendForm } from '#ui/entry/send-form'
import { Details } from '#ui/page/details'
import { Empty } from '#ui/page/empty'
import { Notice } from '#ui/page/notice'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { counted, listed } from '#ui/plural'

type Arranged = Squad & { readonly coachNames: readonly string[]; readonly members: number }

type SquadsBodyProps = {
  /** In age order. */
  readonly squads: readonly Arranged[]
  readonly hasSeason: boolean
  readonly canManagePeople: boolean
  readonly save: SendForm
}

/** The squads of the club, who coaches each and how many play in it; and a new one. */
export function SquadsBody({ squads, hasSeason, canManagePeople, save }: SquadsBodyProps) {
  return (
    <>
      {hasSeason ? null : (
        <Notice>
          Before a squad can add players it needs a season.{' '}
          <PageLink href={paths.clubSeasons()}>Make the season</PageLink>
        </Notice>
      )}
      {squads.length === 0 ? (
        <Empty>There is no squad yet. Add the first one below.</Empty>
      ) : (
        <section>
          <SectionTitle note="In order of age.">Squads</SectionTitle>
          <ul className="space-y-6">
            {squads.map((squad) => (
              <li key={squad.id}>
                <SquadPart
                  squad={squad}
                  hasSeason={hasSeason}
                  canManagePeople={canManagePeople}
                  save={save}
                />
              </li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <SectionTitle>New squad</SectionTitle>
        <SquadForm squad={null} turn={squads.length} send={save} />
      </section>
    </>
  )
}

type SquadPartProps = Pick<SquadsBodyProps, 'hasSeason' | 'canManagePeople' | 'save'> & {
  readonly squad: Arranged
}

function SquadPart({ squad, hasSeason, canManagePeople, save }: SquadPartProps) {
  const { id, name, ageLimit, coachNames, members } = squad
  return (
    <>
      <h3 className="font-semibold">
        {name}, under {ageLimit}
      </h3>
      <p>
        {coachNames.length > 0 ? `Coached by ${listed(coachNames)}. ` : 'Nobody coaches it yet. '}
        {canManagePeople ? <PageLink href={paths.clubPeople()}>Choose who coaches it</PageLink> : null}
      </p>
      <p>{members > 0 ? `${counted(members, 'player')}.` : 'No players yet.'}</p>
      {hasSeason ? (
        <p className="flex flex-wrap gap-x-5">
          <PageLink href={paths.players(id)} className="tap inline-flex items-center">
            {members > 0 ? 'Its players' : 'Add players one by one'}
          </PageLink>
          <PageLink href={paths.files(id)} className="tap inline-flex items-center">
            Take in a list of players
          </PageLink>
          <PageLink href={paths.clubFormats()} className="tap inline-flex items-center">
            How it plays its matches
          </PageLink>
        </p>
      ) : null}
      <Details summary={`Change ${name}`}>
        <SquadForm squad={squad} send={save} />
      </Details>
    </>
  )
}
