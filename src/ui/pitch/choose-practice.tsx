import { formatDay } from '#ui/format-day'
import { paths } from '#ui/paths'
import { counted } from '#ui/plural'

export type PracticeOnPhone = {
  readonly sessionId: string
  readonly squadName: string
  readonly day: string
  readonly title: string
  readonly startsAt: string | null
  readonly waiting: number
}

/** The practices that this phone has; `null`: it is still looking. */
export function ChoosePractice({ practices }: { readonly practices: readonly PracticeOnPhone[] | null }) {
  return (
    <section className="space-y-4 p-4">
      <h1 className="text-2xl font-bold">At the pitch</h1>
      {practices?.length === 0 ? (
        <p>
          No practice is on this phone yet. Open one in the book and tap “To the pitch” while there is a
          signal: from then on it works without.
        </p>
      ) : null}
      <ul className="space-y-2">
        {practices?.map((practice) => (
          <li key={practice.sessionId}>
            <a
              href={paths.pitch(practice.sessionId)}
              className="tap flex w-full flex-col !items-start justify-center border-2 border-ink px-3 py-2 font-bold text-ink no-underline"
            >
              <span>
                {practice.squadName}, {formatDay(practice.day)}
                {practice.startsAt ? `, ${practice.startsAt}` : ''}
              </span>
              <span className="text-base font-medium">
                {[
                  practice.title,
                  practice.waiting > 0 ? `${counted(practice.waiting, 'tap')} not sent yet` : '',
                ]
                  .filter(Boolean)
                  .join(' · ')}
              </span>
            </a>
          </li>
        ))}
      </ul>
      <p>
        <a href={paths.start()} className="tap font-semibold">
          To the book (needs a signal)
        </a>
      </p>
    </section>
  )
}
