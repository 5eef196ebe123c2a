'use client'

import { requestKinds, requestLimits } from '#rights/child-request'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { TextArea } from '#ui/page/text-area'
import { askWords } from '#ui/rights/rights-words'

type AskFormProps = { readonly playerId: string; readonly send: SendForm }

/** What a family asks, in its own words. Works without a script. */
export function AskForm({ playerId, send }: AskFormProps) {
  return (
    <ReplyForm
      send={send}
      refusedTitle="Not sent"
      waiting="Sending…"
      places={{ kind: 'What you want', text: 'In your own words' }}
    >
      {(reply) => {
        const typed = reply.status === 'refused' ? reply.typed : {}
        return (
          <div className="max-w-prose space-y-4">
            <input type="hidden" name="playerId" value={playerId} />
            <fieldset>
              <legend className="font-medium">What do you want?</legend>
              {requestKinds.map((kind) => (
                <label key={kind} className="tap flex cursor-pointer items-center gap-3">
                  <input
                    type="radio"
                    name="kind"
                    value={kind}
                    required
                    defaultChecked={typed.kind === kind}
                    className="size-5 shrink-0 accent-accent"
                  />
                  {askWords[kind]}
                </label>
              ))}
            </fieldset>
            <TextArea
              name="text"
              label="In your own words"
              hint="What it is about. You need not give a reason. Please write nothing about another child."
              maxLength={requestLimits.text}
              typed={typed.text}
            />
            <Button>Send to the club</Button>
          </div>
        )
      }}
    </ReplyForm>
  )
}
