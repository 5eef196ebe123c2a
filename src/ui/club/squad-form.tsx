'use client'

import type { Squad } from '#squad/squad'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'

type SquadFormProps = {
  /** Null: a new one. */
  readonly squad: Squad | null
  /** Changes when another was added: the fields are empty again, and what was said stays. */
  readonly turn?: number
  readonly send: SendForm
}

const places = { name: 'Name', ageLimit: 'Under how many years' }

/** A squad's name and age. */
export function SquadForm({ squad, turn = 0, send }: SquadFormProps) {
  const key = squad?.id ?? 'new'
  return (
    <ReplyForm
      send={send}
      refusedTitle="Nothing was saved"
      places={places}
      waiting="Saving. With another age other rules may hold, and the squad is counted anew; this can take a minute."
    >
      {(reply) => {
        const refused = reply.status === 'refused' ? reply : null
        const problemOf = (path: string) => refused?.problems.find((one) => one.path === path)?.message
        return (
          <>
            <input type="hidden" name="squadId" value={squad?.id ?? ''} />
            <div key={turn} className="max-w-md space-y-4">
              <Field
                name="name"
                id={`name-${key}`}
                label={places.name}
                required
                maxLength={80}
                autoComplete="off"
                defaultValue={refused?.typed.name ?? squad?.name ?? ''}
                problem={problemOf('name')}
              />
              <Field
                name="ageLimit"
                id={`age-${key}`}
                label={places.ageLimit}
                hint="10 for the under-tens. Squads stand in this order, and rules can be set for an age."
                required
                inputMode="numeric"
                maxLength={2}
                autoComplete="off"
                defaultValue={refused?.typed.ageLimit ?? squad?.ageLimit ?? ''}
                problem={problemOf('ageLimit')}
              />
              <Button weight={squad ? 'plain' : 'main'}>{squad ? 'Save the squad' : 'Add the squad'}</Button>
            </div>
          </>
        )
      }}
    </ReplyForm>
  )
}
