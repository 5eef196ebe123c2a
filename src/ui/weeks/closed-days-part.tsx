import type { ReactNode } from 'react'
import type { ClosedDays } from '#squad/closed-days'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay, formatDays } from '#ui/format-day'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'

const places = { firstDay: 'First day', lastDay: 'Last day', name: 'What it is' }

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
  const key = squadId ? <input type="hidden" name="squadId" value={squadId} /> : null
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
              <ReplyForm send={remove} refusedTitle="Nothing was changed" waiting="Saving…">
                {key}
                <input type="hidden" name="closedId" value={span.id} />
                <Button weight="plain" aria-label={`Take out ${span.name}, ${spanText(span)}`}>
                  Take out
                </Button>
              </ReplyForm>
            ) : null}
          </li>
        ))}
      </ul>
      <ReplyForm send={add} refusedTitle="Nothing was added" waiting="Saving…" places={places}>
        {key}
        {/* Empty again once they stand in the list; what was said of it stays. */}
        <div key={closed.length} className="flex max-w-prose flex-wrap items-end gap-4">
          <Field name="name" id="closed-name" label={places.name} required maxLength={80} />
          <Field name="firstDay" id="closed-first" label={places.firstDay} type="date" required />
          <Field
            name="lastDay"
            id="closed-last"
            label={places.lastDay}
            hint="Empty: that one day."
            type="date"
          />
          <Button weight="plain">Add these days</Button>
        </div>
      </ReplyForm>
    </div>
  )
}

/** "Mon, 22 Jun 2026" for one day, "22 Jun – 23 Jun 2026" for more. */
export function spanText(span: Pick<ClosedDays, 'firstDay' | 'lastDay'>): string {
  return span.firstDay === span.lastDay ? formatDay(span.firstDay) : formatDays(span)
}
