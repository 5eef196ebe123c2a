'use client'

import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { newPasswordHint, PasswordField } from '#ui/sign-in/password-field'

type MailedLinkBodyProps = {
  readonly purpose: 'signIn' | 'newPassword' | 'address'
  readonly code: string
  readonly send: SendForm
}

const says = {
  signIn: { told: 'You asked for a link to sign in.', button: 'Sign in', refused: 'Not signed in' },
  newPassword: {
    told: 'Choose a new password. Wherever else you are signed in, you are signed out.',
    button: 'Take this password',
    refused: 'Your password is the old one still',
  },
  address: {
    told: 'This says that the address the mail came to is your own. Links to sign in can be sent to it from then on.',
    button: 'Yes, this is my address',
    refused: 'Not confirmed',
  },
} as const

/** What a link in a mail does, done by a button: programs that look through mails open links, and press none. */
export function MailedLinkBody({ purpose, code, send }: MailedLinkBodyProps) {
  const { told, button, refused } = says[purpose]
  return (
    <ReplyForm send={send} refusedTitle={refused} waiting="One moment…">
      <div className="space-y-4">
        <p>{told}</p>
        <input type="hidden" name="code" value={code} />
        {purpose === 'newPassword' ? (
          <PasswordField label="New password" autoComplete="new-password" hint={newPasswordHint} />
        ) : null}
        <Button>{button}</Button>
      </div>
    </ReplyForm>
  )
}
