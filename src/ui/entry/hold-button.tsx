'use client'

import { useEffect, useRef, useState } from 'react'

const holdMs = 700

type HoldButtonProps = {
  readonly label: string
  /** Asked after the press; nothing happens before the answer. */
  readonly question: string
  readonly yes: string
  readonly isOn: boolean
  readonly onConfirm: () => void
  readonly className?: string
}

/**
 * For what must not happen by a slip of the thumb: press and hold, then answer. With a keyboard or another tool that
 * cannot hold, the press alone asks the question.
 */
export function HoldButton({ label, question, yes, isOn, onConfirm, className = '' }: HoldButtonProps) {
  const [isAsking, setIsAsking] = useState(false)
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined)
  const isPointer = useRef(false)
  useEffect(() => () => clearTimeout(timer.current), [])
  const release = () => clearTimeout(timer.current)
  if (isAsking) {
    return (
      <div role="alertdialog" aria-label={question} className="border-2 border-warn bg-warn-pale p-3">
        <p className="font-medium">{question}</p>
        <p className="mt-2 flex flex-wrap gap-2">
          <button
            type="button"
            className="tap cursor-pointer border border-warn bg-warn px-3 font-medium text-white"
            onClick={() => {
              setIsAsking(false)
              onConfirm()
            }}
          >
            {yes}
          </button>
          <button
            type="button"
            className="tap cursor-pointer border border-rule-strong bg-leaf px-3"
            onClick={() => setIsAsking(false)}
          >
            No
          </button>
        </p>
      </div>
    )
  }
  return (
    <button
      type="button"
      aria-pressed={isOn}
      title="Press and hold"
      onPointerDown={() => {
        isPointer.current = true
        timer.current = setTimeout(() => setIsAsking(true), holdMs)
      }}
      onPointerUp={release}
      onPointerLeave={release}
      onContextMenu={(event) => event.preventDefault()}
      onClick={() => {
        if (!isPointer.current) setIsAsking(true)
        isPointer.current = false
      }}
      className={`tap cursor-pointer touch-none border border-warn bg-leaf px-3 text-warn select-none aria-pressed:bg-warn aria-pressed:text-white ${className}`}
    >
      {label}
    </button>
  )
}
