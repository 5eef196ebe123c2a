'use client'

import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'

type GoalsFormProps = { readonly countsGoals: boolean; readonly send: SendForm }

/** Whether goals of matches are written down. */
export function GoalsForm({ countsGoals, send }: GoalsFormProps) {
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" waiting="Saving…" className="space-y-3">
      <SectionTitle note="For each match, never by child, and never to compare. Families do not see them.">
        Goals of matches
      </SectionTitle>
      <p className="max-w-prose">
        {countsGoals
          ? 'Goals are counted: coaches may write down how a match ended.'
          : 'Goals are not counted: nobody is asked for them, and no page shows any.'}
      </p>
      <input type="hidden" name="countsGoals" value={countsGoals ? 'no' : 'yes'} />
      <Button weight="plain">{countsGoals ? 'Stop counting goals' : 'Count goals'}</Button>
    </ReplyForm>
  )
}
