import type { PitchState } from '#pitch/pitch-state'
import type { SquadId } from '#squad/squad'
import { clockWords } from '#ui/pitch/clock-words'
import { IntoTheBook } from '#ui/pitch/into-the-book'
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
      <IntoTheBook sessionId={sessionId} squadId={squadId} isHelper={isHelper} isAllSent={isAllSent} />
    </section>
  )
}
