import type { Day } from '#common/time'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'

type WhenAndWhereFormProps = {
  readonly squadId: string
  readonly session: {
    readonly id: string
    readonly kind: 'practice' | 'match'
    readonly day: Day
    readonly title: string
    readonly startsAt: string | null
    readonly place: string
    readonly isWritten: boolean
  }
  readonly send: SendForm
}

const places = { day: 'Day', title: 'Title', startsAt: 'Time of day', place: 'Place' }

/** When and where a session is held, and what it is called; of one that is written down the day stays. */
export function WhenAndWhereForm({ squadId, session, send }: WhenAndWhereFormProps) {
  return (
    <Details summary="Change title, time or place">
      <ReplyForm
        send={send}
        refusedTitle="Nothing was changed"
        places={places}
        waiting="Saving …"
        className="max-w-xl space-y-4"
      >
        <input type="hidden" name="squadId" value={squadId} />
        <input type="hidden" name="sessionId" value={session.id} />
        {session.isWritten ? (
          <input type="hidden" name="day" value={session.day} />
        ) : (
          <Field name="day" label={places.day} type="date" required defaultValue={session.day} />
        )}
        <Field
          name="title"
          label={places.title}
          maxLength={120}
          defaultValue={session.title}
          hint={session.kind === 'match' ? 'Such as against whom; may stay empty.' : 'May stay empty.'}
        />
        <Field name="startsAt" label={places.startsAt} type="time" defaultValue={session.startsAt ?? ''} />
        <Field name="place" label={places.place} maxLength={120} defaultValue={session.place} />
        <Button>Save</Button>
      </ReplyForm>
    </Details>
  )
}
