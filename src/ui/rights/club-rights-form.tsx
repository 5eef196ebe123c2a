import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { TextArea } from '#ui/page/text-area'
import { Tick } from '#ui/page/tick'

export type ClubRightsShown = {
  readonly retentionMonths: number | null
  readonly askWhom: string
  readonly holidays: readonly string[]
}

const places = {
  retentionMonths: 'Months',
  askWhom: 'Whom families ask',
  holidays: 'Public holidays',
}

/** How long names are kept, whom families ask, which days are public holidays. */
export function ClubRightsForm({
  rights,
  send,
}: {
  readonly rights: ClubRightsShown
  readonly send: SendForm
}) {
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" waiting="Saving…" places={places}>
      <div className="max-w-prose space-y-4">
        <Field
          name="retentionMonths"
          label="Months a name is kept, after the season in which a child left"
          hint="1 to 120. Empty: not decided, and nothing goes by itself. Times and turns stay without the name, so that the others’ sums stay true."
          inputMode="numeric"
          defaultValue={rights.retentionMonths ?? ''}
        />
        <Tick
          name="sure"
          label="Erase at once whose time is over by it"
          hint="Only needed where it shortens the time so far. It cannot be undone."
          isTicked={false}
        />
        <TextArea
          name="askWhom"
          label={places.askWhom}
          hint="A name and how to reach it. Families read it on their child’s page."
          rows={2}
          maxLength={300}
          typed={rights.askWhom}
        />
        <TextArea
          name="holidays"
          label={places.holidays}
          hint="Of your place, one a line, such as 2026-12-25. A day to answer never falls on them, nor on a weekend."
          maxLength={10_000}
          typed={rights.holidays.join('\n')}
        />
        <Button weight="plain">Save</Button>
      </div>
    </ReplyForm>
  )
}
