import type { Day } from '#common/time'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'

type HandOverFormProps = {
  readonly squad: { readonly id: string; readonly name: string }
  readonly coaches: readonly { readonly id: string; readonly name: string }[]
  readonly today: Day
  readonly send: SendForm
}

/** One action: whoever coaches the squad until the day before, and who coaches it from the day on. */
export function HandOverForm({ squad, coaches, today, send }: HandOverFormProps) {
  return (
    <ReplyForm
      send={send}
      refusedTitle="Not handed over"
      waiting="Handing over…"
      places={{ personId: 'To', day: 'From' }}
    >
      <input type="hidden" name="squadId" value={squad.id} />
      <div className="flex max-w-prose flex-wrap items-end gap-4">
        <Select
          id={`to-${squad.id}`}
          name="personId"
          label="To"
          options={[
            { value: '', label: 'choose' },
            ...coaches.map(({ id, name }) => ({ value: id, label: name })),
          ]}
        />
        <Field id={`day-${squad.id}`} name="day" label="From" type="date" required defaultValue={today} />
        <Button weight="plain">Hand over the {squad.name}</Button>
      </div>
    </ReplyForm>
  )
}
