'use client'

import type { SquadId } from '#squad/squad'
import { paths } from '#ui/paths'
import { PitchButton } from '#ui/pitch/pitch-button'
import { ToKnow } from '#ui/pitch/to-know'

type MatchMoreProps = {
  readonly sessionId: string
  readonly squadId: SquadId
  readonly isHelper: boolean
  /** Plans the rest anew; null: this phone plans nothing. */
  readonly onPlan: (() => void) | null
  /** How fair the plan is, in words; empty: nothing is planned. */
  readonly sentence: string
  /** What was not taken, and what was tapped and changes nothing. */
  readonly toKnow: readonly string[]
}

/** What is not needed while the ball rolls. */
export function MatchMore({ sessionId, squadId, isHelper, onPlan, sentence, toKnow }: MatchMoreProps) {
  return (
    <section aria-labelledby="more" className="space-y-4">
      <h2 id="more" className="text-2xl font-bold">
        More
      </h2>
      {sentence ? <p className="border-l-4 border-ink pl-3">{sentence}</p> : null}
      {onPlan ? (
        <PitchButton className="w-full" onClick={onPlan}>
          Plan the rest anew
        </PitchButton>
      ) : null}
      <ToKnow sentences={toKnow} />
      <p className="text-base">
        A knock to the head, or in doubt: off, and out for today. Your country’s rules and a doctor say when
        play may go on, not this page.
      </p>
      <ul className="font-semibold">
        {isHelper ? null : (
          <>
            <li>
              <a href={paths.lineUp(squadId, { sessionId })}>The line-up in the book (needs a signal)</a>
            </li>
            <li>
              <a href={paths.helpers(squadId, { sessionId })}>A helper joins (needs a signal)</a>
            </li>
            <li>
              <a href={paths.session(squadId, { sessionId })}>This match in the book (needs a signal)</a>
            </li>
          </>
        )}
        <li>
          <a href={paths.pitch()}>What is on this phone</a>
        </li>
      </ul>
    </section>
  )
}
