'use client'

import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'

/** Our own themes and practice designs, for a club that has none yet. */
export function OursForm({ send }: { readonly send: SendForm }) {
  return (
    <ReplyForm send={send} refusedTitle="Nothing was added" waiting="Adding…">
      <Button weight="plain">Start with our themes and practice designs</Button>
    </ReplyForm>
  )
}
