'use client'

import { type ReactNode, useId } from 'react'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'

type MailFormProps = { readonly send: SendForm; readonly button: string; readonly children: ReactNode }

/** Asks for a mail to one's own address. */
export function MailForm({ send, button, children }: MailFormProps) {
  const id = useId()
  return (
    <ReplyForm send={send} refusedTitle="Nothing was sent" waiting="Asking for the mail…">
      <div className="space-y-3 pt-2">
        <p>{children}</p>
        <Field
          id={id}
          name="email"
          label="Your e-mail address"
          type="email"
          autoComplete="email"
          required
          maxLength={254}
        />
        <Button weight="plain">{button}</Button>
      </div>
    </ReplyForm>
  )
}
