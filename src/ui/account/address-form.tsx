'use client'

import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'

/** Asks for the mail that shows an address to be one's own. */
export function AddressForm({ send }: { readonly send: SendForm }) {
  return (
    <ReplyForm send={send} refusedTitle="Nothing was sent" waiting="Asking for the mail…">
      <div className="space-y-3">
        <p>
          Your address is not confirmed yet. Until it is, no link to sign in or to a new password is sent to
          it.
        </p>
        <Button weight="plain">Send me a mail to confirm it</Button>
      </div>
    </ReplyForm>
  )
}
