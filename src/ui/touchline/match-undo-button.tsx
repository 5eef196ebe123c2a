'use client'

import { inOrder } from '#pitch/event-order'
import type { PlayerId } from '#squad/player'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchEvent } from '#touchline/match-pack'
import type { MatchState } from '#touchline/match-state'
import { UndoBar } from '#ui/pitch/undo-bar'
import { matchDeedWords, matchStepWords } from '#ui/touchline/match-deed-words'
import { matchStepsTogether, matchUndoDeeds } from '#ui/touchline/match-undo-deeds'

type MatchUndoButtonProps = {
  readonly state: Pick<MatchState, 'undoable' | 'redoable'>
  readonly events: readonly MatchEvent[]
  readonly nameOf: (id: PlayerId) => string
  readonly onDeeds: (deeds: readonly MatchDeed[]) => void
}

/** Takes back the last tap beside a match. */
export function MatchUndoButton({ state, events, nameOf, onDeeds }: MatchUndoButtonProps) {
  const steps = matchStepsTogether(state.undoable)
  // Only right after an undo: later it would bring back what nobody remembers.
  const again = inOrder(events).at(-1)?.deed.kind === 'undo' ? state.redoable[0] : undefined
  const deeds = steps.map(({ event }) => event.deed)
  return (
    <UndoBar
      what={steps.length > 0 ? matchStepWords(deeds, nameOf) : null}
      needsAnswer={steps.some(({ needsSecondAnswer }) => needsSecondAnswer)}
      again={again ? matchDeedWords(again.event.deed, nameOf) : null}
      onUndo={() => onDeeds(matchUndoDeeds(steps))}
      onAgain={() => onDeeds((again?.by ?? []).map((undoes) => ({ kind: 'undo', undoes })))}
    />
  )
}
