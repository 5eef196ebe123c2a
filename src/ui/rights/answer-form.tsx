'use client'

import { requestLimits, requestOutcomes } from '#rights/child-request'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'
import { TextArea } from '#ui/page/text-area'
import { outcomeWords } from '#ui/rights/rights-words'

const places = { outcome: 'How it ended', answer: 'What the family is told' }

/** How a request ended, and what the family is told. */
export function AnswerForm({ requestId, send }: { readonly requestId: string; readonly send: SendForm }) {
  return (
    <ReplyForm send={send} refusedTitle="Not answered" waiting="Saving…" places={places}>
      {(reply) => {
        const typed = reply.status === 'refused' ? reply.typed : {}
        return (
          <div className="max-w-prose space-y-4">
            <input type="hidden" name="requestId" value={requestId} />
            <Select
              name="outcome"
              label={places.outcome}
              options={requestOutcomes.map((value) => ({ value, label: outcomeWords[value] }))}
              defaultValue={typed.outcome ?? 'done'}
            />
            <TextArea
              name="answer"
              label={places.answer}
              hint="In plain words. If you refuse: why, and where the family can complain."
              maxLength={requestLimits.answer}
              required
              typed={typed.answer}
            />
            <Button>Answer it</Button>
          </div>
        )
      }}
    </ReplyForm>
  )
}
