import type { PitchToday } from '#pitch/pitch-today'
import { formatDay } from '#ui/format-day'
import { paths } from '#ui/paths'
import { PracticeLink } from '#ui/pitch/practice-link'
import { counted } from '#ui/plural'

export type PracticeOnPhone = {
  readonly sessionId: string
  readonly kind: 'practice' | 'match'
  readonly squadName: string
  readonly day: string
  readonly title: string
  readonly startsAt: string | null
  readonly waiting: number
}

type ChoosePracticeProps = {
  /** Those that this phone has; `null`: it is still looking. */
  readonly practices: readonly PracticeOnPhone[] | null
  readonly today: PitchToday
}

export function ChoosePractice({ practices, today }: ChoosePracticeProps) {
  const isHere = (id: string) => practices?.some(({ sessionId }) => sessionId === id) ?? false
  const toFetch = today.practices.filter(({ sessionId }) => !isHere(sessionId))
  return (
    <section className="space-y-4 p-4">
      <h1 className="text-2xl font-bold">At the pitch</h1>
      {practices?.length === 0 && toFetch.length === 0 ? <p>{emptySentence(today)}</p> : null}
      <ul className="space-y-2">
        {practices?.map((practice) => (
          <PracticeLink
            key={practice.sessionId}
            practice={practice}
            when={formatDay(practice.day)}
            more={practice.waiting > 0 ? `${counted(practice.waiting, 'tap')} not sent yet` : ''}
          />
        ))}
        {practices &&
          toFetch.map((practice) => (
            <PracticeLink
              key={practice.sessionId}
              practice={practice}
              when="today"
              more="Tap to bring it onto this phone"
            />
          ))}
      </ul>
      {today.isHelper ? (
        <p>
          <a href={paths.account()} className="tap font-semibold">
            Your sign-in, and signing out
          </a>
        </p>
      ) : (
        <p>
          <a href={paths.start()} className="tap font-semibold">
            To the book (needs a signal)
          </a>
        </p>
      )}
    </section>
  )
}

function emptySentence({ isHelper }: PitchToday): string {
  return isHelper
    ? 'No squad that you help has a practice or match today. On the day it stands here.'
    : 'No practice or match is on this phone yet. Open one in the book and tap “To the pitch” while there is a signal: from then on it works without.'
}
