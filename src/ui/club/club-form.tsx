'use client'

import { TimeZoneField } from '#ui/club/time-zone-field'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'

type ClubFormProps = {
  readonly name: string
  readonly timeZone: string
  readonly timeZones: readonly string[]
  readonly send: SendForm
}

const places = { name: 'Name of the club', timeZone: 'Time zone' }

/** The club's name, and the zone by which its day begins. */
export function ClubForm({ name, timeZone, timeZones, send }: ClubFormProps) {
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" places={places} waiting="Saving…">
      {(reply) => {
        const typed = reply.status === 'refused' ? reply.typed : {}
        return (
          <div className="max-w-md space-y-4">
            <Field
              name="name"
              label={places.name}
              required
              maxLength={80}
              defaultValue={typed.name ?? name}
            />
            <TimeZoneField zones={timeZones} chosen={typed.timeZone ?? timeZone} />
            <Button weight="plain">Save</Button>
          </div>
        )
      }}
    </ReplyForm>
  )
}
