import type { Day } from '#common/time'
import type { PlayerAway } from '#squad/player-away'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { OneButtonForm } from '#ui/page/one-button-form'
import { ReplyForm } from '#ui/page/reply-form'
import { type OfPlayer, PlayerKeys } from '#ui/player/about-form'
import { SpanFields, spanPlaces } from '#ui/weeks/span-fields'
import { spanText } from '#ui/weeks/span-text'

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
            <OneButtonForm
              send={sends.removeAway}
              fields={{ ...of, awayId: span.id }}
              label="Take out"
              name={`Take out ${spanText(span)}`}
            />
          </li>
        ))}
      </ul>
      <ReplyForm
        send={sends.addAway}
        refusedTitle="Nothing was changed"
        waiting="Saving…"
        places={spanPlaces}
      >
        <PlayerKeys {...of} />
        <div key={away.length} className="flex flex-wrap items-end gap-4">
          <SpanFields of="away" firstDay={today} hint="That day included. Empty: that one day." />
          <Button weight="plain">Save days away</Button>
        </div>
      </ReplyForm>
    </div>
  )
}
