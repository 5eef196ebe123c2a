'use client'

import { inOrder } from '#pitch/event-order'
import type { Deed, PitchEvent } from '#pitch/pitch-event'
import type { RedoStep, UndoStep } from '#pitch/undo-steps'
import type { Cast } from '#ui/pitch/cast'
import { deedWords, stepWords } from '#ui/pitch/deed-words'
import { UndoBar } from '#ui/pitch/undo-bar'
import { stepsTogether, undoDeeds } from '#ui/pitch/undo-deeds'

type UndoButtonProps = {
  readonly undoable: readonly UndoStep[]
  readonly redoable: readonly RedoStep[]
  readonly events: readonly PitchEvent[]
  readonly cast: Cast
  readonly onDeeds: (deeds: readonly Deed[]) => void
}

/** Takes back the last tap of a practice. */
export function UndoButton({ undoable, redoable, events, cast, onDeeds }: UndoButtonProps) {
  const steps = stepsTogether(undoable)
  // Only right after an undo: later it would bring back what nobody remembers.
  const again = inOrder(events).at(-1)?.deed.kind === 'undo' ? redoable[0] : undefined
  const deeds = steps.map(({ event }) => event.deed)
  return (
    <UndoBar
      what={steps.length > 0 ? stepWords(deeds, cast) : null}
      needsAnswer={steps.some(({ needsSecondAnswer }) => needsSecondAnswer)}
      again={again ? deedWords(again.event.deed, cast) : null}
      onUndo={() => onDeeds(undoDeeds(steps, events))}
      onAgain={() => onDeeds((again?.by ?? []).map((undoes) => ({ kind: 'undo', undoes })))}
    />
  )
}
