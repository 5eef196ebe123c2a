import type { ViewerRole } from '#access/viewer'
import type { Day } from '#common/time'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay } from '#ui/format-day'
import { Button } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'
import { Select } from '#ui/page/select'

type Kind = 'coach' | 'cover' | 'helps'

type SquadLinesPartProps = {
  readonly person: { readonly id: string; readonly role: ViewerRole }
  readonly lines: readonly {
    readonly id: string
    readonly squadName: string
    readonly kind: Kind
    readonly firstDay: Day
    readonly lastDay: Day | null
  }[]
  readonly squads: readonly { readonly id: string; readonly name: string }[]
  readonly today: Day
  readonly add: SendForm
  readonly end: SendForm
}

const kindText = { coach: 'coaches', cover: 'covers', helps: 'helps at the pitch' } as const
const places = { squadId: 'Squad', kind: 'Does what', firstDay: 'From', lastDay: 'Until' }

/** The squads that a person coaches, covers or helps with, from when to when. */
export function SquadLinesPart({ person, lines, squads, today, add, end }: SquadLinesPartProps) {
  const kinds: readonly Kind[] = person.role === 'helper' ? ['helps'] : ['coach', 'cover', 'helps']
  return (
    <section>
      <SectionTitle note="A coach sees these squads from the first day to the last.">Squads</SectionTitle>
      {lines.length === 0 ? <p>No squad yet.</p> : null}
      <ul className="max-w-prose">
        {lines.map((line) => (
          <li key={line.id} className="border-b border-rule py-2">
            <p>
              <strong className="font-medium">{line.squadName}</strong>: {kindText[line.kind]} from{' '}
              {formatDay(line.firstDay)}
              {line.lastDay ? ` to ${formatDay(line.lastDay)}` : ' on'}.
            </p>
            {line.lastDay === null || line.lastDay >= today ? (
              <ReplyForm send={end} refusedTitle="Nothing was changed" waiting="Saving …" places={places}>
                <input type="hidden" name="personId" value={person.id} />
                <input type="hidden" name="lineId" value={line.id} />
                <div className="flex flex-wrap items-end gap-3">
                  <Field
                    name="lastDay"
                    id={`last-${line.id}`}
                    label="Last day"
                    type="date"
                    required
                    defaultValue={line.lastDay ?? today}
                  />
                  <Button weight="plain">End it then</Button>
                </div>
              </ReplyForm>
            ) : null}
          </li>
        ))}
      </ul>
      <Details summary="Add a squad">
        <ReplyForm send={add} refusedTitle="No squad was added" waiting="Saving …" places={places}>
          <input type="hidden" name="personId" value={person.id} />
          <div className="max-w-md space-y-4">
            <Select
              name="squadId"
              label={places.squadId}
              options={squads.map(({ id, name }) => ({ value: id, label: name }))}
            />
            <Select
              name="kind"
              label={places.kind}
              options={kinds.map((kind) => ({ value: kind, label: kindText[kind] }))}
            />
            <Field name="firstDay" label={places.firstDay} type="date" required defaultValue={today} />
            <Field name="lastDay" label={places.lastDay} hint="Empty: until you end it." type="date" />
            <Button weight="plain">Add this squad</Button>
          </div>
        </ReplyForm>
      </Details>
    </section>
  )
}
