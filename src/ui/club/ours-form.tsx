'use client'

import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'

type OursFormProps = {
  /** The club has no theme and no design yet. */
  readonly isOffered: boolean
  readonly send: SendForm
}

/** Our own themes, practice designs and match formats, for a club that has none yet. What was added is said where the button was. */
export function OursForm({ isOffered, send }: OursFormProps) {
  return (
    <ReplyForm send={send} refusedTitle="Nothing was added" waiting="Adding…" className="empty:hidden">
      {isOffered ? (
        <>
          <SectionTitle note="Write your own later, or begin with ours and change them as you like.">
            Themes, practice designs and match formats
          </SectionTitle>
          <Button weight="plain">Start with our themes, designs and formats</Button>
        </>
      ) : null}
    </ReplyForm>
  )
}
