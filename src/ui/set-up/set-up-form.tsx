'use client'

import { TimeZoneField } from '#ui/club/time-zone-field'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'

type SetUpFormProps = {
  readonly timeZones: readonly string[]
  /** Of the machine this runs on: the likeliest. */
  readonly timeZone: string
  readonly send: SendForm
}

const places: Readonly<Record<string, string>> = {
  code: 'The code',
  clubName: 'Name of the club',
  timeZone: 'Time zone',
  name: 'Your name',
  email: 'Your e-mail address',
  password: 'A password',
}

/** The club, and the sign-in of whoever looks after it. */
export function SetUpForm({ timeZones, timeZone, send }: SetUpFormProps) {
  return (
    <ReplyForm send={send} refusedTitle="Nothing was made yet" places={places} waiting="Making your club…">
      {(reply) => {
        const refused = reply.status === 'refused' ? reply : null
        const field = (name: string) => ({
          name,
          label: places[name] ?? name,
          required: true,
          defaultValue: refused?.typed[name] ?? '',
          problem: refused?.problems.find(({ path }) => path === name)?.message,
        })
        return (
          <div className="space-y-5">
            <Field
              {...field('code')}
              hint="The start printed it, beside the address of this page. It works once."
              autoComplete="off"
              autoCapitalize="characters"
              spellCheck={false}
              maxLength={100}
            />
            <Field {...field('clubName')} autoComplete="organization" maxLength={80} />
            <TimeZoneField
              zones={timeZones}
              chosen={refused?.typed.timeZone ?? timeZone}
              problem={field('timeZone').problem}
            />
            <Field
              {...field('name')}
              hint="As coaches and parents know you."
              autoComplete="name"
              maxLength={80}
            />
            <Field {...field('email')} type="email" autoComplete="username" maxLength={254} />
            <Field
              {...field('password')}
              type="password"
              hint="15 letters or more. Four or five words that do not belong together are easy to keep in mind."
              autoComplete="new-password"
              minLength={15}
              maxLength={256}
            />
            <Button>Make the club</Button>
          </div>
        )
      }}
    </ReplyForm>
  )
}
