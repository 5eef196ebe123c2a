'use client'

import { CalendarAddress } from '#ui/account/calendar-address'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { Tick } from '#ui/page/tick'

type CalendarFormProps = {
  readonly squads: readonly { readonly id: string; readonly name: string }[]
  /** The address that stands now; null: none. */
  readonly standingId: string | null
  readonly send: SendForm
}

/** Makes an address and shows it this once, for as long as it stands. */
export function CalendarForm({ squads, standingId, send }: CalendarFormProps) {
  return (
    <ReplyForm send={send} refusedTitle="No address was made" waiting="Making an address…">
      {(reply) => (
        <div className="space-y-3">
          {squads.length > 1 ? (
            <fieldset>
              <legend className="font-medium">Only these squads</legend>
              <p className="text-sm text-soft">Tick none to have all of them, new ones too.</p>
              {squads.map(({ id, name }) => (
                <Tick key={id} name={`squad-${id}`} label={name} isTicked={false} />
              ))}
            </fieldset>
          ) : null}
          <p className="max-w-prose text-sm text-soft">
            Whoever has the address can read the calendar, without a password. Give it to nobody; take it back
            if you lose a device.
            {standingId === null ? '' : ' A new address takes the place of the one you have.'}
          </p>
          <Button weight="plain">
            {standingId === null ? 'Make an address' : 'Make a new address instead'}
          </Button>
          {reply.status === 'done' && reply.link && standingId && reply.link.href.includes(standingId) ? (
            <CalendarAddress link={reply.link} />
          ) : null}
        </div>
      )}
    </ReplyForm>
  )
}
