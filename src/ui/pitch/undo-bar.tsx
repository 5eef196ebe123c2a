'use client'

import { useState } from 'react'
import { HoldButton } from '#ui/entry/hold-button'
import { PitchButton } from '#ui/pitch/pitch-button'
import { Sheet } from '#ui/pitch/sheet'

type UndoBarProps = {
  /** What would be taken back, in a few words; null: nothing can be. */
  readonly what: string | null
  /** Somebody would no longer be out for today: asked for a second time. */
  readonly needsAnswer: boolean
  /** What was taken back and can be had again; null: nothing. */
  readonly again: string | null
  readonly onUndo: () => void
  readonly onAgain: () => void
}

/** Takes back the last tap, and the one before, and so on to the first. */
export function UndoBar({ what, needsAnswer, again, onUndo, onAgain }: UndoBarProps) {
  const [isAsking, setIsAsking] = useState(false)
  if (what === null && again === null) return null
  return (
    <div className="flex min-w-0 flex-1 gap-2">
      {what === null ? null : (
        <PitchButton
          className="min-w-0 flex-1 truncate text-lg"
          onClick={() => (needsAnswer ? setIsAsking(true) : onUndo())}
        >
          Undo: {what}
        </PitchButton>
      )}
      {again === null ? null : (
        <PitchButton className="min-w-0 shrink truncate" aria-label={`Again: ${again}`} onClick={onAgain}>
          Again
        </PitchButton>
      )}
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
              onUndo()
              setIsAsking(false)
            }}
          />
        </Sheet>
      ) : null}
    </div>
  )
}
