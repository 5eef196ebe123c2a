import type { Day } from '#common/time'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay } from '#ui/format-day'
import { Button } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'
import { Tick } from '#ui/page/tick'
import { paths } from '#ui/paths'
import type { ListedLink } from '#ui/people/link-words'
import { MakeLinkForm } from '#ui/people/make-link-form'
import { listed } from '#ui/plural'

type ChildrenPartProps = {
  readonly person: {
    readonly id: string
    readonly name: string
    readonly email: string | null
    readonly accessEndedOn: Day | null
  }
  readonly ofPerson: readonly {
    readonly playerId: string
    readonly name: string
    readonly claimedOn: Day | null
    readonly withholdsComing: boolean
  }[]
  readonly search: {
    readonly text: string
    readonly found: readonly {
      readonly id: string
      readonly name: string
      readonly squadNames: readonly string[]
    }[]
    readonly isCut: boolean
  } | null
  readonly record: SendForm
  readonly remove: SendForm
  readonly withhold: SendForm
  readonly makeFamilyLink: SendForm
  /** All that were made for the person. */
  readonly links: readonly ListedLink[]
}

/** Whose parent or guardian a person is. */
export function ChildrenPart(props: ChildrenPartProps) {
  const { person, ofPerson, search } = props
  const own = new Set(ofPerson.map(({ playerId }) => playerId))
  return (
    <section>
      <SectionTitle note="Record only whom you know to be the parent or carer. The page of a child opens once the person has used a link for it.">
        Children
      </SectionTitle>
      {ofPerson.length === 0 ? <p>No child is recorded.</p> : null}
      <ul className="max-w-prose">
        {ofPerson.map((child) => (
          <ChildLine key={child.playerId} child={child} {...props} />
        ))}
      </ul>
      <form method="get" action={paths.clubPerson(person.id)} className="mt-4 flex max-w-md items-end gap-3">
        <div className="grow">
          <Field
            name="find"
            label="Find a child by name"
            type="search"
            maxLength={80}
            required
            defaultValue={search?.text}
          />
        </div>
        <Button weight="plain">Find</Button>
      </form>
      {search ? (
        <div className="mt-3">
          {search.found.length === 0 ? <p>No child of the club has “{search.text}” in its name.</p> : null}
          <ul className="max-w-prose">
            {search.found.map(({ id, name, squadNames }) => (
              <li key={id} className="border-b border-rule py-2">
                <p>
                  {name}
                  {squadNames.length > 0 ? <span className="text-soft">, {listed(squadNames)}</span> : null}
                </p>
                {own.has(id) ? (
                  <p className="text-sm text-soft">Recorded already.</p>
                ) : (
                  <ReplyForm send={props.record} refusedTitle="Not recorded" waiting="Recording …">
                    <OfChild personId={person.id} playerId={id} />
                    <Button weight="plain">
                      Record {person.name} for {name}
                    </Button>
                  </ReplyForm>
                )}
              </li>
            ))}
          </ul>
          {search.isCut ? <p>There are more: write more of the name.</p> : null}
        </div>
      ) : null}
    </section>
  )
}

function OfChild({ personId, playerId }: { readonly personId: string; readonly playerId: string }) {
  return (
    <>
      <input type="hidden" name="personId" value={personId} />
      <input type="hidden" name="playerId" value={playerId} />
    </>
  )
}

type ChildLineProps = Pick<
  ChildrenPartProps,
  'person' | 'remove' | 'withhold' | 'makeFamilyLink' | 'links'
> & {
  readonly child: ChildrenPartProps['ofPerson'][number]
}

function ChildLine({ child, person, remove, withhold, makeFamilyLink, links }: ChildLineProps) {
  const { playerId, name, claimedOn, withholdsComing } = child
  const keys = <OfChild personId={person.id} playerId={playerId} />
  return (
    <li className="space-y-2 border-b border-rule py-3">
      <p>
        <strong className="font-medium">{name}</strong>:{' '}
        {claimedOn ? `opened the page on ${formatDay(claimedOn)}` : 'has not opened the page yet'}
        {withholdsComing ? '; time and place are kept back' : ''}.
      </p>
      {claimedOn === null && person.accessEndedOn === null ? (
        <MakeLinkForm
          fields={{ personId: person.id, playerId }}
          label="Make a link"
          canBeMailed={person.email !== null}
          links={links}
          send={makeFamilyLink}
        />
      ) : null}
      <Details summary="Change or take away">
        <ReplyForm send={withhold} refusedTitle="Nothing was changed" waiting="Saving …">
          {keys}
          <Tick
            name="withholdsComing"
            id={`withhold-${playerId}`}
            label="Keep time and place of practices from this person"
            isTicked={withholdsComing}
          />
          <Button weight="plain">Save</Button>
        </ReplyForm>
        <ReplyForm
          send={remove}
          refusedTitle="Not taken away"
          waiting="Taking it away …"
          className="mt-4 space-y-2"
        >
          {keys}
          <p>
            {person.name} can then no longer open the page of {name}.
          </p>
          <Button weight="plain">Take this child away</Button>
        </ReplyForm>
      </Details>
    </li>
  )
}
