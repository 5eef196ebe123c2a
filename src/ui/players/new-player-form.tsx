'use client'

import type { Day } from '#common/time'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'
import { Tick } from '#ui/page/tick'

type NewPlayerFormProps = {
  readonly squadId: string
  readonly today: Day
  /** Who can join without being a new player: guests, and those who once belonged here. */
  readonly others: readonly { readonly id: string; readonly name: string; readonly was: string }[]
  readonly send: SendForm
}

const places = { name: 'Name', firstDay: 'Member from', who: 'Same name' }

/** A player who joins. Asked who it is only when the name is there already. */
export function NewPlayerForm({ squadId, today, others, send }: NewPlayerFormProps) {
  return (
    <ReplyForm
      send={send}
      refusedTitle="Nobody was added yet"
      waiting="Adding. The sessions from that day on are being counted anew; this can take a minute."
      places={places}
    >
      {(reply) => (
        <>
          <input type="hidden" name="squadId" value={squadId} />
          <div className="max-w-md space-y-4">
            <Field
              name="name"
              id="new-name"
              label={places.name}
              hint="First name and family name."
              required
              maxLength={80}
              autoComplete="off"
            />
            <Field
              name="firstDay"
              id="new-first"
              label={places.firstDay}
              type="date"
              required
              defaultValue={today}
            />
            <Tick name="keeps" label="May be put in goal" isTicked />
            <Tick name="wantsToKeep" label="Asks to keep goal" isTicked={false} />
            {reply.status === 'refused' && reply.problems.some(({ path }) => path === 'who') ? (
              <Select
                name="who"
                label="Who is it?"
                options={[
                  { value: '', label: 'choose' },
                  { value: 'another', label: 'another player of the same name' },
                  ...others.map(({ id, name, was }) => ({ value: id, label: `${name}, ${was}` })),
                ]}
              />
            ) : null}
            <Button>Add the player</Button>
          </div>
        </>
      )}
    </ReplyForm>
  )
}
