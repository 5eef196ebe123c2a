import type { ComponentProps } from 'react'
import type { ViewerRole } from '#access/viewer'
import type { Day } from '#common/time'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay } from '#ui/format-day'
import { Button, LinkButton } from '#ui/page/button'
import { Notice } from '#ui/page/notice'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { ChildrenPart } from '#ui/people/children-part'
import { LinkList } from '#ui/people/link-list'
import type { ListedLink } from '#ui/people/link-words'
import { MakeLinkForm } from '#ui/people/make-link-form'
import { PersonFields, personPlaces } from '#ui/people/person-fields'
import { SquadLinesPart } from '#ui/people/squad-lines-part'

type Person = ComponentProps<typeof ChildrenPart>['person'] & {
  readonly role: ViewerRole
  readonly hasSignIn: boolean
  readonly isViewer: boolean
}

export type PersonDeeds = {
  readonly change: SendForm
  readonly endAccess: SendForm
  readonly giveAccessBack: SendForm
  readonly addLine: SendForm
  readonly endLine: SendForm
  readonly recordGuardian: SendForm
  readonly removeGuardian: SendForm
  readonly withhold: SendForm
  readonly makeLink: SendForm
  readonly makeFamilyLink: SendForm
  readonly revoke: SendForm
}

type PersonBodyProps = {
  readonly person: Person
  readonly roles: readonly ViewerRole[]
  readonly squads: ComponentProps<typeof SquadLinesPart>['squads']
  readonly lines: ComponentProps<typeof SquadLinesPart>['lines']
  readonly today: Day
  readonly ofPerson: ComponentProps<typeof ChildrenPart>['ofPerson']
  readonly search: ComponentProps<typeof ChildrenPart>['search']
  readonly links: readonly ListedLink[]
  readonly deeds: PersonDeeds
}

/** One adult: who it is, how it comes in, its squads and children, and the end of its access. */
export function PersonBody(props: PersonBodyProps) {
  const { person, roles, links, deeds } = props
  const fields = { personId: person.id }
  return (
    <>
      {person.isViewer ? <Notice>This is you.</Notice> : null}
      <section>
        <SectionTitle note={roles.includes(person.role) ? 'A new role holds at once.' : undefined}>
          About
        </SectionTitle>
        <ReplyForm
          send={deeds.change}
          refusedTitle="Nothing was changed"
          waiting="Saving …"
          places={personPlaces}
        >
          <input type="hidden" name="personId" value={person.id} />
          <div className="max-w-md space-y-4">
            <PersonFields person={person} roles={roles} />
            <Button weight="plain">Save</Button>
          </div>
        </ReplyForm>
      </section>
      <SignInPart person={person} deeds={deeds} links={links} />
      {person.role === 'guardian' ? null : (
        <SquadLinesPart {...props} add={deeds.addLine} end={deeds.endLine} />
      )}
      <ChildrenPart
        person={person}
        search={props.search}
        record={deeds.recordGuardian}
        remove={deeds.removeGuardian}
        withhold={deeds.withhold}
        makeFamilyLink={deeds.makeFamilyLink}
        ofPerson={props.ofPerson}
        links={links}
      />
      {links.length > 0 ? (
        <section>
          <SectionTitle>Links made for {person.name}</SectionTitle>
          <LinkList links={links} fields={fields} revoke={deeds.revoke} />
        </section>
      ) : null}
      <AccessPart person={person} deeds={deeds} />
      <p>
        <LinkButton href={paths.clubPeople()}>All adults of the club</LinkButton>
      </p>
    </>
  )
}

type PartProps = { readonly person: Person; readonly deeds: PersonDeeds }

function SignInPart({ person, deeds, links }: PartProps & Pick<PersonBodyProps, 'links'>) {
  if (person.accessEndedOn) return null
  const canBeMailed = person.email !== null
  if (person.hasSignIn)
    return (
      <section>
        <SectionTitle note="For somebody who cannot sign in any more. Make sure it is really this person who asks you.">
          New password
        </SectionTitle>
        <MakeLinkForm
          fields={{ personId: person.id, kind: 'recover' }}
          label="Make a link for a new password"
          canBeMailed={canBeMailed}
          links={links}
          send={deeds.makeLink}
        />
      </section>
    )
  if (person.role === 'guardian') return null
  return (
    <section>
      <SectionTitle note="No sign-in yet. A link lets this person choose one.">Join</SectionTitle>
      <MakeLinkForm
        fields={{ personId: person.id, kind: 'join' }}
        label="Make a link to join"
        canBeMailed={canBeMailed}
        links={links}
        send={deeds.makeLink}
      />
    </section>
  )
}

function AccessPart({ person, deeds }: PartProps) {
  const { accessEndedOn } = person
  return (
    <section>
      <SectionTitle>Access</SectionTitle>
      {accessEndedOn ? (
        <ReplyForm send={deeds.giveAccessBack} refusedTitle="Nothing was changed" waiting="Saving …">
          <input type="hidden" name="personId" value={person.id} />
          <p className="mb-2">Ended on {formatDay(accessEndedOn)}.</p>
          <Button weight="plain">Give the access back</Button>
        </ReplyForm>
      ) : (
        <ReplyForm send={deeds.endAccess} refusedTitle="Nothing was changed" waiting="Saving …">
          <input type="hidden" name="personId" value={person.id} />
          <p className="mb-2 max-w-prose">
            This signs {person.name} out everywhere, and nothing of the club opens any more. What was written
            stays. You can give the access back later.
          </p>
          <Button weight="plain">End the access</Button>
        </ReplyForm>
      )}
    </section>
  )
}
