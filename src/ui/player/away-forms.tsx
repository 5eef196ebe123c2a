import type { Day } from '#common/time'
import type { PlayerAway } from '#squad/player-away'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { type OfPlayer, PlayerKeys } from '#ui/player/about-form'
import { spanText } from '#ui/weeks/closed-days-part'

const places = { firstDay: 'First day', lastDay: 'Last day' }

type AwayFormsProps = {
  readonly of: OfPlayer
  readonly away: readonly PlayerAway[]
  readonly today: Day
  readonly sends: Readonly<Record<'addAway' | 'removeAway', SendForm>>
}

/** Days on which the player is known to be away. There is no field for a reason. */
export function AwayForms({ of, away, today, sends }: AwayFormsProps) {
  return (
    <div className="space-y-4">
      <p className="max-w-prose text-sm text-soft">
        Plans of the weeks ahead do not count on the player on these days. Why is not written down. Who was
        there is still tapped or typed at each practice.
      </p>
      <ul className="max-w-prose">
        {away.map((span) => (
          <li
            key={span.id}
            className="flex flex-wrap items-center justify-between gap-x-4 border-b border-rule py-1"
          >
            {spanText(span)}
            <ReplyForm send={sends.removeAway} refusedTitle="Nothing was changed" waiting="Saving…">
              <PlayerKeys {...of} />
              <input type="hidden" name="awayId" value={span.id} />
              <Button weight="plain" aria-label={`Take out ${spanText(span)}`}>
                Take out
              </Button>
            </ReplyForm>
          </li>
        ))}
      </ul>
      <ReplyForm send={sends.addAway} refusedTitle="Nothing was changed" waiting="Saving…" places={places}>
        <PlayerKeys {...of} />
        <div key={away.length} className="flex flex-wrap items-end gap-4">
          <Field
            name="firstDay"
            id="away-first"
            label={places.firstDay}
            type="date"
            required
            defaultValue={today}
          />
          <Field
            name="lastDay"
            id="away-last"
            label={places.lastDay}
            hint="That day included. Empty: that one day."
            type="date"
          />
          <Button weight="plain">Save days away</Button>
        </div>
      </ReplyForm>
    </div>
  )
}
