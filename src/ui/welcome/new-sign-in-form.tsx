'use client'

import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { newPasswordHint, PasswordField } from '#ui/sign-in/password-field'

const places = { email: 'Your e-mail address', password: 'A password' }

/** Somebody without a sign-in chooses one. */
export function NewSignInForm({ button, send }: { readonly button: string; readonly send: SendForm }) {
  return (
    <ReplyForm send={send} refusedTitle="This did not work yet" waiting="One moment …" places={places}>
      {(reply) => {
        const refused = reply.status === 'refused' ? reply : null
        const problemOf = (name: string) => refused?.problems.find(({ path }) => path === name)?.message
        return (
          <div className="space-y-5">
            <Field
              name="email"
              label={places.email}
              type="email"
              required
              maxLength={254}
              autoComplete="username"
              defaultValue={refused?.typed.email ?? ''}
              problem={problemOf('email')}
            />
            <PasswordField
              label={places.password}
              autoComplete="new-password"
              hint={newPasswordHint}
              problem={problemOf('password')}
            />
            <Button className="w-full text-lg">{button}</Button>
          </div>
        )
      }}
    </ReplyForm>
  )
}
