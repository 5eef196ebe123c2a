'use client'

import type { Day } from '#common/time'
import { consentKinds, consentWordingLimit } from '#rights/consent-kind'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'
import { TextArea } from '#ui/page/text-area'

type ConsentFormProps = {
  readonly playerId: string
  readonly today: Day
  readonly guardians: readonly { readonly id: string; readonly name: string }[]
  readonly send: SendForm
}

const places = { kind: 'What for', wording: 'The words', givenById: 'Given by', givenOn: 'Given on' }

/** What a guardian agreed to, word for word. */
export function ConsentForm({ playerId, today, guardians, send }: ConsentFormProps) {
  return (
    <ReplyForm send={send} refusedTitle="Not written down" waiting="Saving…" places={places}>
      {(reply) => {
        const typed = reply.status === 'refused' ? reply.typed : {}
        return (
          <div className="max-w-prose space-y-4">
            <input type="hidden" name="playerId" value={playerId} />
            <Select
              name="kind"
              id="consent-kind"
              label={places.kind}
              options={consentKinds.map(({ kind, name }) => ({ value: kind, label: name }))}
              defaultValue={typed.kind}
            />
            <TextArea
              name="wording"
              label={places.wording}
              hint="Word for word, as the guardian read them. Words to begin with stand below."
              maxLength={consentWordingLimit}
              required
              typed={typed.wording}
            />
            <div className="flex flex-wrap gap-4">
              <Select
                name="givenById"
                label={places.givenById}
                options={guardians.map(({ id, name }) => ({ value: id, label: name }))}
                defaultValue={typed.givenById}
              />
              <Field
                name="givenOn"
                label={places.givenOn}
                type="date"
                required
                max={today}
                defaultValue={typed.givenOn ?? today}
              />
            </div>
            <Button weight="plain">Write it down</Button>
          </div>
        )
      }}
    </ReplyForm>
  )
}
