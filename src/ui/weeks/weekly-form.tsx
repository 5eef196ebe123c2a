import type { Problem } from '#common/problem'
import type { Day } from '#common/time'
import type { WeeklyDays } from '#squad/weekly-days'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay } from '#ui/format-day'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { Problems } from '#ui/page/problems'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'
import { paths } from '#ui/paths'
import { weekdayNames } from '#ui/weeks/weekday-names'
import { words } from '#ui/words'

const places = {
  weekday: 'Day of the week',
  startsAt: 'Time of day',
  place: 'Place',
  lengthMinutes: 'Length in minutes',
  firstDay: 'From',
  lastDay: 'Until',
}

type AskedWeekly = Readonly<Record<keyof typeof places, string>>

type AskFormProps = {
  readonly squadId: string
  readonly today: Day
  readonly lastDay: Day
  readonly asked: AskedWeekly
  readonly problems: readonly Problem[]
}

/** Asks which practices there would be; nothing is added by it. */
export function AskWeeklyForm({ squadId, today, lastDay, asked, problems }: AskFormProps) {
  const field = (name: Exclude<keyof typeof places, 'weekday'>) => ({
    name,
    label: places[name],
    defaultValue: asked[name],
    problem: problems.find(({ path }) => path === name)?.message,
  })
  return (
    <form action={paths.weekly(squadId)} method="get" className="max-w-xl space-y-4">
      <Problems title="Nothing to show yet" problems={problems} places={places} />
      <Select
        name="weekday"
        label={places.weekday}
        defaultValue={asked.weekday}
        options={[...weekdayNames]}
      />
      <div className="flex flex-wrap items-end gap-4">
        <Field {...field('firstDay')} type="date" required min={today} max={lastDay} />
        <Field {...field('lastDay')} type="date" required min={today} max={lastDay} />
      </div>
      <div className="flex flex-wrap items-end gap-4">
        <Field {...field('startsAt')} type="time" />
        <Field {...field('lengthMinutes')} inputMode="numeric" maxLength={3} />
      </div>
      <Field {...field('place')} maxLength={120} />
      <Button weight="plain">Show the days</Button>
    </form>
  )
}

type FoundWeeklyProps = {
  readonly squadId: string
  readonly asked: AskedWeekly
  readonly days: WeeklyDays
  readonly send: SendForm
}

/** What would be added and what not, before it is. */
export function FoundWeekly({ squadId, asked, days: { add, skipped }, send }: FoundWeeklyProps) {
  const fields = { squadId, ...asked, days: add.join() }
  return (
    <div className="mt-6 space-y-3" id="found">
      <h3 className="font-semibold">
        {add.length > 0
          ? `${words.practices(add.length)} would be added`
          : 'There is no day to add a practice on'}
      </h3>
      <ul className="max-w-prose columns-2 gap-6 tabular-nums">
        {add.map((day) => (
          <li key={day}>{formatDay(day)}</li>
        ))}
      </ul>
      {skipped.length > 0 ? (
        <div>
          <p className="font-medium">Left out:</p>
          <ul className="max-w-prose">
            {skipped.map(({ day, why, name }) => (
              <li key={day}>
                {formatDay(day)}: {why === 'closed' ? name : 'has a practice already'}
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      {add.length > 0 ? (
        <ReplyForm send={send} refusedTitle="Nothing was added" waiting="Adding…" places={places}>
          {Object.entries(fields).map(([name, value]) => (
            <input key={name} type="hidden" name={name} value={value} />
          ))}
          <Button>Add {add.length === 1 ? 'this practice' : `these ${add.length} practices`}</Button>
        </ReplyForm>
      ) : null}
    </div>
  )
}
