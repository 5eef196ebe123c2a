'use client'

import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'

/** Another address for the same sign-in: a slip is mended here. */
export function OtherAddressForm({ send }: { readonly send: SendForm }) {
  return (
    <Details summary="Use another address">
      <ReplyForm send={send} refusedTitle="The address is the old one still" waiting="Saving…">
        <div className="space-y-3 pt-2">
          <Field
            name="email"
            id="other-email"
            label="Your new e-mail address"
            hint="A mail goes there, to show that it is yours."
            type="email"
            autoComplete="email"
            required
            maxLength={254}
          />
          <Button weight="plain">Take this address</Button>
        </div>
      </ReplyForm>
    </Details>
  )
}
