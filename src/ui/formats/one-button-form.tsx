'use client'

import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'

type OneButtonFormProps = {
  readonly send: SendForm
  /** What is sent with it. */
  readonly fields: Readonly<Record<string, string>>
  readonly label: string
  /** What it is for, where several buttons say the same. */
  readonly about: string
}

/** A button that does one thing, and what came of it below. */
export function OneButtonForm({ send, fields, label, about }: OneButtonFormProps) {
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" waiting="Saving…">
      {Object.entries(fields).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <Button weight="plain" aria-label={`${label}: ${about}`}>
        {label}
      </Button>
    </ReplyForm>
  )
}
