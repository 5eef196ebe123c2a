import type { PitchState } from '#pitch/pitch-state'
import type { SquadId } from '#squad/squad'
import { paths } from '#ui/paths'
import { clockWords } from '#ui/pitch/clock-words'
import { counted } from '#ui/plural'
import { words } from '#ui/words'

type OverScreenProps = {
  readonly state: PitchState
  readonly sessionId: string
  readonly squadId: SquadId
  readonly isHelper: boolean
  /** Everything tapped is with the book. */
  readonly isAllSent: boolean
}

/** After “Stop here”: what it came to, and the way into the book. */
export function OverScreen({ state, sessionId, squadId, isHelper, isAllSent }: OverScreenProps) {
  const { beganAt, endedAt, played } = state
  const seconds = beganAt === null || endedAt === null ? 0 : (endedAt - beganAt) / 1000
  return (
    <section aria-labelledby="over" className="space-y-4">
      <h2 id="over" className="text-2xl font-bold">
        The practice is over
      </h2>
      <p className="tabular-nums">
        {clockWords(seconds)} in all, {words.turns(played.length)} in{' '}
        {counted(new Set(played.map(({ round }) => round)).size, 'round')}.
      </p>
      {isHelper ? (
        <p>
          {isAllSent
            ? 'Everything is sent. Thank you: the coach does the rest.'
            : 'Keep this page open until all is sent.'}
        </p>
      ) : isAllSent ? (
        <p>
          <a
            href={paths.whistle(squadId, { sessionId })}
            className="tap flex w-full items-center justify-center border-2 border-ink bg-ink px-3 text-center font-semibold !text-white no-underline"
          >
            Check it and write it into the book
          </a>
        </p>
      ) : (
        <p className="border-2 border-ink p-2">
          When there is a signal, open this page: everything is sent by itself, and you can check it and write
          it into the book. Until then it is safe on this phone.
        </p>
      )}
    </section>
  )
}
