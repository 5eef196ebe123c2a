import type { Day } from '#common/time'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay } from '#ui/format-day'
import { LinkButton } from '#ui/page/button'
import { Empty } from '#ui/page/empty'
import { Notice } from '#ui/page/notice'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { LinkList } from '#ui/people/link-list'
import type { ListedLink } from '#ui/people/link-words'
import { MakeLinkForm } from '#ui/people/make-link-form'
import { listed } from '#ui/plural'

type Guardian = {
  readonly personId: string
  readonly name: string
  readonly claimedOn: Day | null
  readonly hasAccess: boolean
  readonly canBeMailed: boolean
  readonly links: readonly ListedLink[]
}

type FamilyLinksBodyProps = {
  readonly squad: { readonly id: string }
  readonly playerId: string
  readonly childName: string
  readonly guardians: readonly Guardian[]
  readonly administrators: readonly string[]
  readonly mayRecord: boolean
  readonly isOnlyThisMachine: boolean
  readonly make: SendForm
  readonly revoke: SendForm
}

/** Links that open one child's page to its recorded guardians, to be handed over one by one. */
export function FamilyLinksBody(props: FamilyLinksBodyProps) {
  const { squad, playerId, childName, guardians } = props
  return (
    <>
      <p className="max-w-prose">
        A link opens the page of {childName} to one guardian. Show the code to that person, or send the link.
        Guardians do not see each other here or on the page.
      </p>
      {props.isOnlyThisMachine ? (
        <Notice>
          This page was opened under an address that only this machine understands. Open it under the address
          that phones reach it by, or the code leads them nowhere.
        </Notice>
      ) : null}
      {guardians.length === 0 ? (
        <Empty>
          No guardian is recorded for {childName} yet. {whoRecords(props)}
        </Empty>
      ) : null}
      {guardians.map((guardian) => (
        <section key={guardian.personId}>
          <SectionTitle note={standsText(guardian)}>{guardian.name}</SectionTitle>
          {guardian.claimedOn === null && guardian.hasAccess ? (
            <MakeLinkForm
              fields={{ personId: guardian.personId, playerId }}
              label={guardian.links.some(({ state }) => state === 'open') ? 'Make a new link' : 'Make a link'}
              canBeMailed={guardian.canBeMailed}
              links={guardian.links}
              send={props.make}
            />
          ) : null}
          <LinkList links={guardian.links} fields={{ playerId }} revoke={props.revoke} />
        </section>
      ))}
      {guardians.length > 0 ? (
        <p className="max-w-prose text-soft">Somebody is missing? {whoRecords(props)}</p>
      ) : null}
      <p className="flex flex-wrap gap-2">
        <LinkButton href={paths.familyPreview(squad.id, { playerId })}>The family’s page</LinkButton>
        {props.mayRecord ? <LinkButton href={paths.clubPeople()}>Adults of the club</LinkButton> : null}
      </p>
    </>
  )
}

function standsText({ claimedOn, hasAccess }: Guardian): string {
  if (!hasAccess) return 'The access of this person has ended.'
  return claimedOn ? `Opened the page on ${formatDay(claimedOn)}.` : 'Has not opened the page yet.'
}

function whoRecords({
  administrators,
  mayRecord,
}: Pick<FamilyLinksBodyProps, 'administrators' | 'mayRecord'>): string {
  if (mayRecord) return 'Record the person on the page of the club’s adults.'
  const whom = administrators.length > 0 ? `: ${listed(administrators)}` : ''
  return `The administrator of the club records who is a child’s guardian. Ask there${whom}.`
}
