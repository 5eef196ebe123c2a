'use client'

import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'

type OneButtonFormProps = {
  readonly send: SendForm
  /** What is sent with it. */
  readonly fields: Readonly<Record<string, string>>
  readonly label: string
  /** Label and what it is for, since several buttons may say the same. */
  readonly name: string
}

/** A button that does one thing, and what came of it below. */
export function OneButtonForm({ send, fields, label, name }: OneButtonFormProps) {
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" waiting="Saving…">
      {Object.entries(fields).map(([key, value]) => (
        <input key={key} type="hidden" name={key} value={value} />
      ))}
      <Button weight="plain" aria-label={name}>
        {label}
      </Button>
    </ReplyForm>
  )
}
