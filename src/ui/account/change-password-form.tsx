'use client'

import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { newPasswordHint, PasswordField } from '#ui/sign-in/password-field'

const places = { oldPassword: 'Your password now', password: 'Your new password' }

export function ChangePasswordForm({ send }: { readonly send: SendForm }) {
  return (
    <ReplyForm
      send={send}
      refusedTitle="Your password is the old one still"
      places={places}
      waiting="Saving…"
    >
      <div className="space-y-5">
        <PasswordField name="oldPassword" label={places.oldPassword} autoComplete="current-password" />
        <PasswordField label={places.password} autoComplete="new-password" hint={newPasswordHint} />
        <p className="text-sm text-soft">Wherever else you are signed in, you are signed out.</p>
        <Button>Change my password</Button>
      </div>
    </ReplyForm>
  )
}
