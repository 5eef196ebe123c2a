import type { ReactNode } from 'react'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'

type FirstStepsProps = {
  readonly season: unknown
  readonly squads: readonly {
    readonly id: string
    readonly name: string
    readonly members: number
    readonly coachNames: readonly string[]
  }[]
  readonly canManagePeople: boolean
}

/** What a new club still needs before its first practice, in order; nothing once all of it is there. */
export function FirstSteps({ season, squads, canManagePeople }: FirstStepsProps) {
  const [empty] = squads.filter(({ members }) => members === 0)
  const [uncoached] = squads.filter(({ coachNames }) => coachNames.length === 0)
  const steps: readonly (Step | null)[] = [
    season ? null : { key: 'season', text: <PageLink href={paths.clubSeasons()}>Make the season</PageLink> },
    squads.length > 0
      ? null
      : { key: 'squad', text: <PageLink href={paths.clubSquads()}>Add a squad</PageLink> },
    season && empty ? { key: 'players', text: <Players {...empty} /> } : null,
    canManagePeople && uncoached
      ? {
          key: 'people',
          text: (
            <>
              <PageLink href={paths.clubPeople()}>Say who coaches {uncoached.name}</PageLink>. You can write
              for every squad yourself, too.
            </>
          ),
        }
      : null,
  ]
  const left = steps.flatMap((step) => step ?? [])
  if (left.length === 0) return null
  return (
    <section aria-labelledby="first-steps">
      <SectionTitle id="first-steps" note="Each goes from this list once it is done.">
        To begin with
      </SectionTitle>
      <ol className="max-w-prose list-decimal space-y-3 pl-6">
        {left.map(({ key, text }) => (
          <li key={key}>{text}</li>
        ))}
      </ol>
    </section>
  )
}

type Step = { readonly key: string; readonly text: ReactNode }

function Players({ id, name }: { readonly id: string; readonly name: string }) {
  return (
    <>
      Players of {name}: <PageLink href={paths.players(id)}>add them one by one</PageLink> or{' '}
      <PageLink href={paths.files(id)}>take in a list</PageLink>
    </>
  )
}
