import type { LengthAsked } from '#pitch/length-of-practice'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { Tick } from '#ui/page/tick'
import { lengthQuestion, proposedMinutes } from '#ui/whistle/length-words'

type ConfirmFormProps = {
  readonly kind: 'practice' | 'match'
  readonly squadId: string
  readonly sessionId: string
  readonly version: string
  readonly cursor: number
  /** When somebody typed last, and who; null: nobody did. */
  readonly typed: { readonly byName: string | null; readonly time: string } | null
  /** Who was out for today in the book and is not in what was tapped. */
  readonly takenBack: readonly { readonly id: string; readonly name: string }[]
  /** What has to be answered about how long it was; null: nothing. */
  readonly length: LengthAsked | null
  readonly label: string
  readonly send: SendForm
}

const places = { lengthMinutes: 'How long it was', overTyped: 'Typed by hand', takenBack: 'Out for today' }

/** The one button that writes a practice or match into the book, with what must be answered before. */
export function ConfirmForm({ kind, typed, takenBack, length, label, send, ...sent }: ConfirmFormProps) {
  return (
    <ReplyForm
      send={send}
      refusedTitle="Not written"
      places={places}
      waiting="Writing it into the book …"
      className="space-y-3"
    >
      {Object.entries(sent).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      {length ? (
        <div className="max-w-md">
          <Field
            name="lengthMinutes"
            type="number"
            inputMode="numeric"
            label="How long it was, in minutes"
            hint={lengthQuestion(length)}
            min={1}
            max={1440}
            defaultValue={proposedMinutes(length) ?? ''}
            required
          />
        </div>
      ) : null}
      {typed ? (
        <Tick
          name="overTyped"
          label="What was tapped is to stand in place of what was typed"
          hint={`${typed.byName ?? 'Somebody'} typed this ${kind} in, or corrected it, at ${typed.time}. What was typed stays in the history.`}
          isTicked={false}
        />
      ) : null}
      {takenBack.map(({ id, name }) => (
        <label key={id} className="tap flex cursor-pointer items-center gap-3 font-medium">
          <input
            type="checkbox"
            name="takenBack"
            value={id}
            defaultChecked={false}
            className="size-6 shrink-0 accent-accent"
          />
          {name} was out for today in the book: yes, that was tapped by mistake
        </label>
      ))}
      <Button className="w-full text-lg sm:w-auto">{label}</Button>
    </ReplyForm>
  )
}
