'use client'

import { useState } from 'react'
import { inOrder } from '#pitch/event-order'
import type { Deed, PitchEvent } from '#pitch/pitch-event'
import type { RedoStep, UndoStep } from '#pitch/undo-steps'
import { HoldButton } from '#ui/entry/hold-button'
import type { Cast } from '#ui/pitch/cast'
import { deedWords, stepWords } from '#ui/pitch/deed-words'
import { PitchButton } from '#ui/pitch/pitch-button'
import { Sheet } from '#ui/pitch/sheet'
import { stepsTogether, undoDeeds } from '#ui/pitch/undo-deeds'

type UndoButtonProps = {
  readonly undoable: readonly UndoStep[]
  readonly redoable: readonly RedoStep[]
  readonly events: readonly PitchEvent[]
  readonly cast: Cast
  readonly onDeeds: (deeds: readonly Deed[]) => void
}

/** Takes back the last tap, and the one before, and so on to the first. */
export function UndoButton({ undoable, redoable, events, cast, onDeeds }: UndoButtonProps) {
  const [isAsking, setIsAsking] = useState(false)
  const steps = stepsTogether(undoable)
  const first = steps.at(-1)
  // Only right after an undo: later it would bring back what nobody remembers.
  const again = inOrder(events).at(-1)?.deed.kind === 'undo' ? redoable[0] : undefined
  if (!first && !again) return null
  const needsAnswer = steps.some(({ needsSecondAnswer }) => needsSecondAnswer)
  const undo = () => onDeeds(undoDeeds(steps, events))
  const what = stepWords(
    steps.map(({ event }) => event.deed),
    cast,
  )
  return (
    <div className="flex min-w-0 flex-1 gap-2">
      {first ? (
        <PitchButton
          className="min-w-0 flex-1 truncate text-lg"
          onClick={() => (needsAnswer ? setIsAsking(true) : undo())}
        >
          Undo: {what}
        </PitchButton>
      ) : null}
      {again ? (
        <PitchButton
          className="min-w-0 shrink truncate"
          aria-label={`Again: ${deedWords(again.event.deed, cast)}`}
          onClick={() => onDeeds(again.by.map((undoes) => ({ kind: 'undo', undoes })))}
        >
          Again
        </PitchButton>
      ) : null}
      {isAsking ? (
        <Sheet title={`Undo: ${what}`} onClose={() => setIsAsking(false)}>
          <p>Out for today lasts for the whole day. It is taken back only if it was tapped by mistake.</p>
          <HoldButton
            label="Take it back (press and hold)"
            question="Was it tapped by mistake?"
            yes="Yes, by mistake"
            isOn={false}
            className="w-full border-2 font-semibold"
            onConfirm={() => {
              undo()
              setIsAsking(false)
            }}
          />
        </Sheet>
      ) : null}
    </div>
  )
}
