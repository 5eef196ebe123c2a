import type { Day } from '#common/time'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { type OfPlayer, PlayerKeys } from '#ui/player/about-form'

type MembershipFormProps = {
  readonly of: OfPlayer
  /** Null: days beside those it has had. */
  readonly held: { readonly firstDay: Day; readonly lastDay: Day | null } | null
  readonly today: Day
  readonly send: SendForm
}

const places = { firstDay: 'Member from', lastDay: 'Until', heldFrom: 'Member from' }

/** From when to when a player belongs to the squad; a last day lets it leave. */
export function MembershipForm({ of, held, today, send }: MembershipFormProps) {
  const key = held?.firstDay ?? 'again'
  return (
    <ReplyForm
      send={send}
      refusedTitle="Nothing was changed"
      waiting="Saving. The sessions from the first changed day on are being counted anew; this can take a minute."
      places={places}
    >
      <PlayerKeys {...of} />
      <input type="hidden" name="heldFrom" value={held?.firstDay ?? ''} />
      <div className="flex max-w-prose flex-wrap items-end gap-4">
        <Field
          name="firstDay"
          id={`first-${key}`}
          label={places.firstDay}
          type="date"
          required
          defaultValue={held?.firstDay ?? today}
        />
        <Field
          name="lastDay"
          id={`last-${key}`}
          label={places.lastDay}
          hint="The last day with the squad. Empty: stays."
          type="date"
          defaultValue={held?.lastDay ?? ''}
        />
        <Button weight="plain">{held ? 'Save days' : 'Back in the squad'}</Button>
      </div>
    </ReplyForm>
  )
}
