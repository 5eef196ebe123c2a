'use client'

import type { KeyboardEvent } from 'react'

type BoardCellProps = {
  readonly id: string
  readonly tabIndex: number
  readonly onFocus: () => void
  readonly onKey: (event: KeyboardEvent) => void
  /** Theme and day. */
  readonly words: string
  /** `free`: could be chosen; `closed`: no design of it can be played then. */
  readonly state: 'chosen' | 'free' | 'closed'
  readonly isFirm: boolean
  readonly isHeld: boolean
  readonly onTake: () => void
  /** The theme goes one practice earlier (−1) or later (1). */
  readonly onStep: (step: -1 | 1) => void
  readonly onDrag: (isOn: boolean) => void
}

const said = { chosen: 'planned', free: 'could be planned', closed: 'cannot be played then' }
const sign = { chosen: '●', free: '·', closed: '' }

/** A theme in a practice: planned, possible or not. What is firm is filled, a sketch is only framed. */
export function BoardCell(props: BoardCellProps) {
  const { state, isFirm, isHeld, words } = props
  const handleKey = (event: KeyboardEvent) => {
    const step = event.shiftKey && steps[event.key]
    if (!step || state !== 'chosen') return props.onKey(event)
    event.preventDefault()
    props.onStep(step)
  }
  return (
    <button
      type="button"
      id={props.id}
      tabIndex={props.tabIndex}
      draggable={state === 'chosen'}
      aria-pressed={state === 'chosen'}
      aria-disabled={state === 'closed'}
      aria-label={`${words}: ${said[state]}${state === 'chosen' ? `, ${isHeld ? 'held' : isFirm ? 'firm' : 'sketch'}` : ''}`}
      onFocus={props.onFocus}
      onKeyDown={handleKey}
      onClick={() => state === 'free' && props.onTake()}
      onDragStart={(event) => {
        // Firefox drags nothing without data.
        event.dataTransfer.setData('text/plain', words)
        props.onDrag(true)
      }}
      onDragEnd={() => props.onDrag(false)}
      className={`flex h-9 w-full min-w-11 items-center justify-center ${lookOf(props)}`}
    >
      <span aria-hidden="true">{state === 'chosen' && isHeld ? '■' : sign[state]}</span>
    </button>
  )
}

const steps: Readonly<Record<string, -1 | 1>> = { ArrowLeft: -1, ArrowRight: 1 }

function lookOf({ state, isFirm }: BoardCellProps): string {
  if (state === 'closed') return 'cursor-default'
  if (state === 'free') return 'cursor-pointer text-soft hover:bg-band'
  return isFirm
    ? 'cursor-grab border-2 border-ink bg-ink text-white'
    : 'cursor-grab border-2 border-dashed border-ink bg-leaf'
}
