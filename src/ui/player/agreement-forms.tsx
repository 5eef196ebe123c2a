import type { Day } from '#common/time'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay } from '#ui/format-day'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'
import { type OfPlayer, PlayerKeys } from '#ui/player/about-form'
import { type Agreed, agreedWords } from '#ui/player/agreed-list'
import { lastDayToOffer } from '#ui/player/setting-words'

type FormProps = { readonly of: OfPlayer; readonly today: Day; readonly send: SendForm }

const places = { kind: 'What', duePercent: 'Per cent that stays due', firstDay: 'From', lastDay: 'Until' }

/** Something new agreed with the family. There is no field for a reason. */
export function AgreeForm({ of, today, send }: FormProps) {
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" waiting="Saving…" places={places}>
      <PlayerKeys {...of} />
      <div className="max-w-prose space-y-4">
        <Select
          name="kind"
          label={places.kind}
          options={Object.entries(agreedWords).map(([value, label]) => ({ value, label }))}
        />
        <Field
          name="duePercent"
          label="How much of an even share stays due, in per cent"
          hint="For fewer or shorter turns only. Nothing is held against anyone that was agreed."
          inputMode="numeric"
          defaultValue="50"
        />
        <div className="flex flex-wrap items-end gap-4">
          <Field name="firstDay" id="agreed-first" label="From" type="date" required defaultValue={today} />
          <Field
            name="lastDay"
            id="agreed-last"
            label="Until"
            hint="That day included. Empty: until it is ended."
            type="date"
          />
        </div>
        <Button weight="plain">Agree this</Button>
      </div>
    </ReplyForm>
  )
}

/** The last day of one thing agreed. */
export function EndAgreementForm({ of, today, send, agreed }: FormProps & { readonly agreed: Agreed }) {
  return (
    <ReplyForm
      send={send}
      refusedTitle="Nothing was changed"
      waiting="Saving…"
      places={{ lastDay: 'Last day' }}
    >
      <PlayerKeys {...of} />
      <input type="hidden" name="agreementId" value={agreed.id} />
      <p className="font-medium">
        {agreedWords[agreed.kind]}, from {formatDay(agreed.firstDay)}
      </p>
      <div className="mt-1 flex flex-wrap items-end gap-4">
        <Field
          name="lastDay"
          id={`end-${agreed.id}`}
          label="Last day"
          type="date"
          required
          min={agreed.firstDay}
          defaultValue={agreed.lastDay ?? lastDayToOffer({ firstDay: agreed.firstDay, today })}
        />
        <Button weight="plain">End it</Button>
      </div>
    </ReplyForm>
  )
}
