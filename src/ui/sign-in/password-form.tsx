'use client'

import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { PasswordField } from '#ui/sign-in/password-field'

const places = { email: 'Your e-mail address', password: 'Password' }

export function PasswordForm({ send }: { readonly send: SendForm }) {
  return (
    <ReplyForm send={send} refusedTitle="Not signed in" places={places} waiting="Signing in…">
      {(reply) => (
        <div className="space-y-5">
          <Field
            name="email"
            label={places.email}
            type="email"
            autoComplete="username webauthn"
            required
            maxLength={254}
            defaultValue={reply.status === 'refused' ? (reply.typed.email ?? '') : ''}
          />
          <PasswordField label={places.password} autoComplete="current-password" />
          <Button>Sign in</Button>
        </div>
      )}
    </ReplyForm>
  )
}
