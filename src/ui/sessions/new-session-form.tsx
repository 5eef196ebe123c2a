'use client'

import { useActionState, useState } from 'react'
import type { Day } from '#common/time'
import type { SendForm } from '#ui/entry/send-form'
import { Toggle } from '#ui/entry/toggle'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { Problems } from '#ui/page/problems'
import { Select } from '#ui/page/select'
import { words } from '#ui/words'

type NewSessionFormProps = {
  readonly squadId: string
  readonly today: Day
  readonly season: { readonly firstDay: Day; readonly lastDay: Day }
  readonly designs: readonly { readonly id: string; readonly name: string }[]
  readonly leaders: readonly {
    readonly id: string
    readonly name: string
    readonly kind: 'coach' | 'cover'
  }[]
  readonly leaderId: string
  /** Chosen before the form was opened. */
  readonly designId?: string
  readonly send: SendForm
}

const places = {
  day: 'Day',
  title: 'Title',
  startsAt: 'Time of day',
  place: 'Place',
  lengthMinutes: 'Length',
  designId: 'Design',
  ledById: 'Led by',
  periodCount: 'Periods',
  periodMinutes: 'Minutes each',
  breakMinutes: 'Break',
}

/** A practice or match entered: held, or still to come. */
export function NewSessionForm(props: NewSessionFormProps) {
  const [reply, sendForm, isSaving] = useActionState(props.send, { status: 'idle' } as const)
  const [kind, setKind] = useState<'practice' | 'match'>('practice')
  const problems = reply.status === 'refused' ? reply.problems : []
  const typed = reply.status === 'refused' ? reply.typed : {}
  const problemOf = (path: string) => problems.find((problem) => problem.path === path)?.message
  const field = (name: keyof typeof places, first = '') => ({
    name,
    label: places[name],
    defaultValue: typed[name] ?? first,
    problem: problemOf(name),
  })
  return (
    <form action={sendForm} className="max-w-xl space-y-5">
      <input type="hidden" name="squadId" value={props.squadId} />
      <input type="hidden" name="kind" value={kind} />
      <Problems title="Nothing was saved yet" problems={problems} places={places} />
      <Toggle
        label="What is it"
        options={[
          { value: 'practice', label: words.kind.practice },
          { value: 'match', label: words.kind.match },
        ]}
        value={kind}
        onChange={setKind}
      />
      <Field
        {...field('day', props.today)}
        type="date"
        required
        min={props.season.firstDay}
        max={props.season.lastDay}
      />
      <Field
        {...field('title')}
        maxLength={120}
        hint={kind === 'match' ? 'Such as against whom; may stay empty.' : 'May stay empty.'}
      />
      <Field {...field('startsAt')} type="time" hint="May stay empty." />
      <Field
        {...field('place')}
        maxLength={120}
        hint="May stay empty. Families read time and place only where you switch it on, on the page Families."
      />
      {kind === 'practice' ? (
        <>
          <Field
            {...field('lengthMinutes', '60')}
            inputMode="numeric"
            hint="The whole practice in minutes; may stay empty."
          />
          <Select
            name="designId"
            label={places.designId}
            defaultValue={typed.designId ?? props.designId ?? ''}
            options={[
              { value: '', label: 'No design' },
              ...props.designs.map(({ id, name }) => ({ value: id, label: name })),
            ]}
          />
        </>
      ) : (
        <div className="grid grid-cols-3 items-end gap-3">
          <Field {...field('periodCount', '2')} inputMode="numeric" />
          <Field {...field('periodMinutes', '25')} inputMode="numeric" />
          <Field {...field('breakMinutes', '5')} inputMode="numeric" />
        </div>
      )}
      <Select
        name="ledById"
        label={places.ledById}
        defaultValue={typed.ledById ?? props.leaderId}
        options={props.leaders.map(({ id, name, kind: work }) => ({
          value: id,
          label: work === 'cover' ? `${name} (cover)` : name,
        }))}
      />
      <Button disabled={isSaving}>Go on to writing it down</Button>
    </form>
  )
}
