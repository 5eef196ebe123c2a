'use client'

import { useState } from 'react'
import type { Seconds } from '#common/time'
import { comeAt, type RegisterSegment, setFrom } from '#squad/register-segments'
import { HoldButton } from '#ui/entry/hold-button'
import { MinuteField } from '#ui/entry/minute-field'
import { Button } from '#ui/page/button'
import { words } from '#ui/words'

type RegisterMoreProps = {
  readonly name: string
  readonly segments: readonly RegisterSegment[]
  readonly onSegments: (segments: readonly RegisterSegment[]) => void
  readonly onTakeBack: () => void
}

/** Late, gone, here but not playing, out for today: each from a minute on. */
export function RegisterMore({ name, segments, onSegments, onTakeBack }: RegisterMoreProps) {
  const [isOpen, setIsOpen] = useState(false)
  const [minute, setMinute] = useState<Seconds | null>(null)
  const out = segments.find((segment) => segment.state === 'out')
  const at = minute ?? segments[0]?.from ?? 0
  const choose = (next: readonly RegisterSegment[]) => {
    onSegments(next)
    setIsOpen(false)
  }
  if (!isOpen) return <More name={name} onClick={() => setIsOpen(true)} />
  if (out) {
    return (
      <div className="w-full py-2">
        <HoldButton
          label={`Take back “${words.register.out}”`}
          question={`Is ${name} really fit to play again today? With any knock to the head: no. Your club’s and your federation’s rules on head injuries come first.`}
          yes="Yes, take it back"
          isOn
          onConfirm={() => {
            onTakeBack()
            choose(setFrom(segments, out.from, 'here'))
          }}
        />
        <p className="mt-1 text-sm text-soft">Press and hold.</p>
      </div>
    )
  }
  return (
    <div className="flex w-full flex-wrap items-end gap-2 border-l-4 border-rule-strong bg-paper p-3">
      <MinuteField label="At minute" seconds={minute} placeholder="0" onChange={setMinute} />
      <Button
        type="button"
        weight="plain"
        disabled={minute === null}
        onClick={() => choose(comeAt(segments, at))}
      >
        came then
      </Button>
      <Button
        type="button"
        weight="plain"
        disabled={minute === null}
        onClick={() => choose(setFrom(segments, at, 'away'))}
      >
        left then
      </Button>
      <Button type="button" weight="plain" onClick={() => choose(setFrom(segments, at, 'notPlaying'))}>
        {words.register.notPlaying} from then
      </Button>
      <Button type="button" weight="plain" onClick={() => choose(setFrom(segments, at, 'here'))}>
        plays again from then
      </Button>
      <HoldButton
        label={`${words.register.out} from then`}
        question={`${name}: out for the rest of the day. Sure?`}
        yes="Yes, out for today"
        isOn={false}
        onConfirm={() => choose(setFrom(segments, at, 'out'))}
      />
      <p className="w-full text-sm text-soft">
        “{words.register.out}” is for any knock to the head, and for whatever else must not be undone by a
        slip: press and hold.
      </p>
      <Button type="button" weight="plain" onClick={() => setIsOpen(false)}>
        Close
      </Button>
    </div>
  )
}

function More({ name, onClick }: { readonly name: string; readonly onClick: () => void }) {
  return (
    <button
      type="button"
      onClick={onClick}
      aria-label={`More for ${name}: late, left, not playing, out`}
      className="tap w-11 cursor-pointer text-xl text-accent"
    >
      ⋯
    </button>
  )
}
