import type { ViewerRole } from '#access/viewer'
import type { Day } from '#common/time'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay } from '#ui/format-day'
import { Button } from '#ui/page/button'
import { PageLink } from '#ui/page/page-link'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { PersonFields, personPlaces } from '#ui/people/person-fields'
import { roleMeans, roleTitles } from '#ui/people/role-words'

type AdultRow = {
  readonly id: string
  readonly name: string
  readonly email: string | null
  readonly hasSignIn: boolean
  readonly accessEndedOn: Day | null
  readonly linkUntil: Day | null
}

type PeopleBodyProps = {
  readonly groups: readonly { readonly role: ViewerRole; readonly adults: readonly AdultRow[] }[]
  readonly roles: readonly ViewerRole[]
  readonly add: SendForm
}

/** The adults of the club by role, and a form for one who comes. */
export function PeopleBody({ groups, roles, add }: PeopleBodyProps) {
  return (
    <>
      {groups.map(({ role, adults }) => (
        <section key={role}>
          <SectionTitle note={roleMeans[role]}>{roleTitles[role]}</SectionTitle>
          <ul className="max-w-3xl">
            {adults.map((adult) => (
              <li
                key={adult.id}
                className="flex flex-wrap items-baseline justify-between gap-x-6 border-b border-rule py-1"
              >
                <PageLink
                  href={paths.clubPerson(adult.id)}
                  className="tap inline-flex items-center font-medium"
                >
                  {adult.name}
                </PageLink>
                <span className="text-sm text-soft">{standsText(adult)}</span>
              </li>
            ))}
          </ul>
        </section>
      ))}
      <section>
        <SectionTitle note="Write the person down first. A link to join, the squads and the children come on the next page.">
          Add a person
        </SectionTitle>
        <ReplyForm send={add} refusedTitle="Nobody was added" waiting="Adding …" places={personPlaces}>
          <div className="max-w-md space-y-4">
            <PersonFields person={{ name: '', email: null, role: 'guardian' }} roles={roles} />
            <Button>Add this person</Button>
          </div>
        </ReplyForm>
      </section>
    </>
  )
}

function standsText({ hasSignIn, accessEndedOn, linkUntil }: AdultRow): string {
  if (accessEndedOn) return `access ended on ${formatDay(accessEndedOn)}`
  const link = linkUntil ? `a link can be used until ${formatDay(linkUntil)}` : ''
  if (hasSignIn) return link || 'has a sign-in'
  return link || 'no sign-in yet'
}
