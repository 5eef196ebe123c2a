import type { SquadId } from '#squad/squad'
import { paths } from '#ui/paths'

type IntoTheBookProps = {
  readonly sessionId: string
  readonly squadId: SquadId
  readonly isHelper: boolean
  /** Everything tapped is with the book. */
  readonly isAllSent: boolean
}

/** When all is over: the way into the book. */
export function IntoTheBook({ sessionId, squadId, isHelper, isAllSent }: IntoTheBookProps) {
  if (isHelper)
    return (
      <p>
        {isAllSent
          ? 'Everything is sent. Thank you: the coach does the rest.'
          : 'Keep this page open until all is sent.'}
      </p>
    )
  if (!isAllSent)
    return (
      <p className="border-2 border-ink p-2">
        When there is a signal, open this page: everything is sent by itself, and you can check it and write
        it into the book. Until then it is safe on this phone.
      </p>
    )
  return (
    <p>
      <a
        href={paths.whistle(squadId, { sessionId })}
        className="tap flex w-full items-center justify-center border-2 border-ink bg-ink px-3 text-center font-semibold !text-white no-underline"
      >
        Check it and write it into the book
      </a>
    </p>
  )
}
