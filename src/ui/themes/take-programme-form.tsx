import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'

type TakeProgrammeFormProps = {
  readonly squadId: string
  readonly term: { readonly id: string; readonly name: string }
  readonly hasProgramme: boolean
  readonly sources: readonly { readonly value: string; readonly label: string; readonly why?: string }[]
  readonly send: SendForm
}

/** A programme taken over: one to begin with, or another squad's or term's. */
export function TakeProgrammeForm({ squadId, term, hasProgramme, sources, send }: TakeProgrammeFormProps) {
  return (
    <ReplyForm
      send={send}
      refusedTitle="Nothing was changed"
      waiting="Taking it over…"
      places={{ from: 'From' }}
    >
      <input type="hidden" name="squadId" value={squadId} />
      <input type="hidden" name="termId" value={term.id} />
      <p className="mb-3 max-w-prose text-sm text-soft">
        {hasProgramme
          ? `It takes the place of what ${term.name} has now: parts, weeks and all.`
          : 'It can be changed afterwards as you like.'}{' '}
        Those to begin with are our own judgement, by age. Themes that the club does not have are added.
      </p>
      <div className="max-w-2xl space-y-3">
        <Select
          name="from"
          id="take-from"
          label="From"
          options={sources.map(({ value, label }) => ({ value, label }))}
        />
        <ul className="list-disc pl-5 text-sm text-soft">
          {sources.map(({ value, label, why }) =>
            why ? (
              <li key={value}>
                {label}. {why}
              </li>
            ) : null,
          )}
        </ul>
        <Button weight="plain">Take this programme</Button>
      </div>
    </ReplyForm>
  )
}
