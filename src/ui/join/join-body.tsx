import { formatDay } from '#ui/format-day'
import { Button } from '#ui/page/button'

type JoinBodyProps = {
  readonly code: string
  readonly kind: 'practice' | 'match'
  readonly clubName: string
  readonly squadName: string
  readonly day: string
  readonly title: string
  readonly startsAt: string | null
  readonly join: (form: FormData) => Promise<void>
}

/** What a helper is about to join, and the one button. */
export function JoinBody({ code, kind, clubName, squadName, day, title, startsAt, join }: JoinBodyProps) {
  const when = [formatDay(day), startsAt].filter(Boolean).join(', ')
  return (
    <>
      <p className="text-lg">
        The {kind} of the <strong>{squadName}</strong> of {clubName}, {when}
        {title ? `: ${title}` : ''}.
      </p>
      <p>
        You can tap who is here and what was played, until midnight. You need no account. The children’s first
        names are theirs: keep the phone to yourself, and take no picture of it.
      </p>
      <form action={join}>
        <input type="hidden" name="code" value={code} />
        <Button className="w-full text-lg">Help at this {kind}</Button>
      </form>
    </>
  )
}
