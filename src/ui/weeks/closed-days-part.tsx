import type { ReactNode } from 'react'
import type { ClosedDays } from '#squad/closed-days'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { OneButtonForm } from '#ui/page/one-button-form'
import { ReplyForm } from '#ui/page/reply-form'
import { SpanFields, spanPlaces } from '#ui/weeks/span-fields'
import { spanText } from '#ui/weeks/span-text'

const places = { ...spanPlaces, name: 'What it is' }

type ClosedDaysPartProps = {
  readonly closed: readonly ClosedDays[]
  /** Whose days can be changed here; null: the whole club's. */
  readonly squadId: string | null
  readonly add: SendForm
  readonly remove: SendForm
  /** Said beside days that are changed elsewhere. */
  readonly elsewhere?: ReactNode
}

/** Days without practice, and more of them. */
export function ClosedDaysPart({ closed, squadId, add, remove, elsewhere }: ClosedDaysPartProps) {
  const key: Readonly<Record<string, string>> = squadId ? { squadId } : {}
  return (
    <div className="space-y-5">
      {closed.length === 0 ? <p className="text-soft">None to come are written down.</p> : null}
      <ul className="max-w-prose">
        {closed.map((span) => (
          <li
            key={span.id}
            className="flex flex-wrap items-center justify-between gap-x-4 border-b border-rule py-1"
          >
            <span>
              <strong className="font-semibold">{span.name}</strong>: {spanText(span)}
              {span.squadId === squadId ? null : <span className="block text-sm text-soft">{elsewhere}</span>}
            </span>
            {span.squadId === squadId ? (
              <OneButtonForm
                send={remove}
                fields={{ ...key, closedId: span.id }}
                label="Take out"
                name={`Take out ${span.name}, ${spanText(span)}`}
              />
            ) : null}
          </li>
        ))}
      </ul>
      <ReplyForm send={add} refusedTitle="Nothing was added" waiting="Saving…" places={places}>
        {squadId ? <input type="hidden" name="squadId" value={squadId} /> : null}
        {/* Empty again once they stand in the list; what was said of it stays. */}
        <div key={closed.length} className="flex max-w-prose flex-wrap items-end gap-4">
          <Field name="name" id="closed-name" label={places.name} required maxLength={80} />
          <SpanFields of="closed" hint="Empty: that one day." />
          <Button weight="plain">Add these days</Button>
        </div>
      </ReplyForm>
    </div>
  )
}
