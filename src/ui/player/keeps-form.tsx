import type { Day } from '#common/time'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'
import { type OfPlayer, PlayerKeys } from '#ui/player/about-form'

type KeepsFormProps = {
  readonly of: OfPlayer
  readonly keeps: boolean
  readonly today: Day
  readonly send: SendForm
}

const places = { keeps: 'From that day on', day: 'From' }

/** In goal or not, from a day on. Begins with what is otherwise than today. */
export function KeepsForm({ of, keeps, today, send }: KeepsFormProps) {
  return (
    <ReplyForm
      send={send}
      refusedTitle="Nothing was changed"
      waiting="Saving. The sessions from that day on are being counted anew; this can take a minute."
      places={places}
    >
      <PlayerKeys {...of} />
      <p className="mb-3 max-w-prose text-sm text-soft">
        What was due before that day stays as it is. From it on, the even share of goal is spread over those
        who may be put there.
      </p>
      <div className="flex max-w-prose flex-wrap items-end gap-4">
        <Field
          name="day"
          id="keeps-day"
          label={places.day}
          type="date"
          required
          max={today}
          defaultValue={today}
        />
        <Select
          // Begins anew with the other answer once one is given.
          key={String(keeps)}
          name="keeps"
          label={places.keeps}
          defaultValue={keeps ? 'no' : 'yes'}
          options={[
            { value: 'yes', label: 'may be put in goal' },
            { value: 'no', label: 'asks not to be put in goal' },
          ]}
        />
        <Button weight="plain">Save from that day on</Button>
      </div>
    </ReplyForm>
  )
}
