import { andList } from '#common/and-list'
import type { Day } from '#common/time'
import { CalendarForm } from '#ui/account/calendar-form'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay } from '#ui/format-day'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'

type CalendarPartProps = {
  readonly calendar: {
    readonly clubName: string
    readonly squads: readonly { readonly id: string; readonly name: string }[]
    readonly isFamily: boolean
    readonly isEmpty: boolean
    readonly standing: {
      readonly id: string
      readonly made: string
      readonly squadNames: readonly string[] | null
      readonly lastReadOn: Day | null
    } | null
  }
  readonly make: SendForm
  readonly takeBack: SendForm
}

/** The address under which one's own calendar program reads practices and matches. */
export function CalendarPart({ calendar, make, takeBack }: CalendarPartProps) {
  const { clubName, squads, isFamily, isEmpty, standing } = calendar
  return (
    <section aria-labelledby="calendar-title" className="space-y-3 pt-4">
      <h2 id="calendar-title" className="text-lg font-semibold">
        Your calendar
      </h2>
      <p className="max-w-prose">
        The calendar on your phone or computer can show practices and matches of {clubName}: day, time, place
        and theme. It asks again by itself, so what is moved or cancelled moves there too. No child’s name is
        in it, and a title with one is left out.
      </p>
      {isFamily ? (
        <p className="max-w-prose">
          Of your child’s squad it shows what comes, where the squad tells its families when and where.
          {isEmpty ? ' As it stands, nothing would be in it.' : ''}
        </p>
      ) : null}
      {standing ? (
        <div className="flex max-w-prose flex-wrap items-center justify-between gap-3 border-rule border-y py-3">
          <p>
            {addressFor(standing.squadNames)}
            <span className="block text-sm text-soft">
              Made {standing.made},{' '}
              {standing.lastReadOn ? `last read on ${formatDay(standing.lastReadOn)}` : 'not read yet'}
            </span>
          </p>
          <ReplyForm send={takeBack} refusedTitle="Nothing was taken back" waiting="Taking it back…">
            <Button weight="plain">Take the address back</Button>
          </ReplyForm>
          <p className="text-sm text-soft">
            Taken back, it opens nothing any more. Then take the calendar out of your calendar program too:
            some keep what they had.
          </p>
        </div>
      ) : null}
      {squads.length > 0 ? (
        <CalendarForm squads={squads} standingId={standing?.id ?? null} send={make} />
      ) : null}
    </section>
  )
}

function addressFor(squadNames: readonly string[] | null): string {
  if (squadNames === null) return 'You have an address.'
  return squadNames.length > 0
    ? `You have an address, for ${andList(squadNames)}.`
    : 'You have an address, for squads that are no longer yours.'
}
