import type { Day } from '#common/time'
import { requestKinds, requestLimits } from '#rights/child-request'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'
import { TextArea } from '#ui/page/text-area'
import { requestWords } from '#ui/rights/rights-words'

type WriteDownFormProps = {
  readonly today: Day
  readonly players: readonly { readonly id: string; readonly name: string }[]
  readonly send: SendForm
}

const places = { playerId: 'Child', kind: 'What', receivedOn: 'It came on', text: 'What was said' }

/** A request that came by word of mouth or letter. */
export function WriteDownForm({ today, players, send }: WriteDownFormProps) {
  return (
    <ReplyForm send={send} refusedTitle="Nothing was written down" waiting="Saving…" places={places}>
      <div className="max-w-prose space-y-4">
        <div className="flex flex-wrap gap-4">
          <Select
            name="playerId"
            id="asked-about"
            label={places.playerId}
            options={players.map(({ id, name }) => ({ value: id, label: name }))}
          />
          <Select
            name="kind"
            id="asked-kind"
            label={places.kind}
            options={requestKinds.map((value) => ({ value, label: requestWords[value] }))}
          />
          <Field
            name="receivedOn"
            label={places.receivedOn}
            type="date"
            required
            max={today}
            defaultValue={today}
          />
        </div>
        <TextArea
          name="text"
          id="asked-text"
          label={places.text}
          hint="In the family’s words. No reason is needed."
          rows={3}
          maxLength={requestLimits.text}
        />
        <Button weight="plain">Write it down</Button>
      </div>
    </ReplyForm>
  )
}
