import type { Goals } from '#match/goals'
import { mostGoals } from '#match/goals'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'

type MatchGoalsFormProps = {
  readonly squadId: string
  readonly sessionId: string
  readonly goals: Goals | null
  readonly send: SendForm
}

const places = { ours: 'Our goals', theirs: 'Their goals' }

/** How a match ended, in a club that counts goals. */
export function MatchGoalsForm({ squadId, sessionId, goals, send }: MatchGoalsFormProps) {
  const number = { type: 'number', inputMode: 'numeric', min: 0, max: mostGoals, step: 1 } as const
  return (
    <section>
      <SectionTitle note="The match’s, never a child’s. Leave both empty to take them out.">
        Goals
      </SectionTitle>
      <ReplyForm send={send} refusedTitle="Nothing was changed" places={places} waiting="Saving…">
        <input type="hidden" name="squadId" value={squadId} />
        <input type="hidden" name="sessionId" value={sessionId} />
        <div className="flex max-w-md flex-wrap items-end gap-4">
          <div className="w-28">
            <Field name="ours" label={places.ours} defaultValue={goals?.ours ?? ''} {...number} />
          </div>
          <div className="w-28">
            <Field name="theirs" label={places.theirs} defaultValue={goals?.theirs ?? ''} {...number} />
          </div>
          <Button weight="plain">Save</Button>
        </div>
      </ReplyForm>
    </section>
  )
}
