import type { Day } from '#common/time'
import { Field } from '#ui/page/field'

/** What the fields are called where something is said of them. */
export const spanPlaces = { firstDay: 'First day', lastDay: 'Last day' }

type SpanFieldsProps = {
  /** Told apart by it where a page has several: "away". */
  readonly of: string
  readonly firstDay?: Day
  readonly hint: string
}

/** A day, or the first and the last of several. */
export function SpanFields({ of, firstDay, hint }: SpanFieldsProps) {
  return (
    <>
      <Field
        name="firstDay"
        id={`${of}-first`}
        label={spanPlaces.firstDay}
        type="date"
        required
        defaultValue={firstDay}
      />
      <Field name="lastDay" id={`${of}-last`} label={spanPlaces.lastDay} hint={hint} type="date" />
    </>
  )
}
