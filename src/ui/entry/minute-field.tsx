'use client'

import { useState } from 'react'
import { type Seconds, secondsInMinute } from '#common/time'

type MinuteFieldProps = {
  readonly label: string
  /** Null: nothing written. */
  readonly seconds: Seconds | null
  readonly placeholder?: string
  readonly onChange: (seconds: Seconds | null) => void
}

/** A time in minutes, halves and tenths too ("12.5", "12,5"); what is no time is said at once and changes nothing. */
export function MinuteField({ label, seconds, placeholder, onChange }: MinuteFieldProps) {
  const [typed, setTyped] = useState<string | null>(null)
  const shown = typed ?? (seconds === null ? '' : String(Math.round((seconds / secondsInMinute) * 10) / 10))
  const isWrong = typed !== null && secondsOf(typed) === undefined
  return (
    <label className="block">
      <span className="block text-sm font-medium text-soft">{label}</span>
      <input
        inputMode="decimal"
        className="tap mt-1 w-24 border border-rule-strong bg-leaf px-3"
        value={shown}
        placeholder={placeholder}
        aria-invalid={isWrong || undefined}
        onChange={(event) => {
          setTyped(event.target.value)
          const understood = secondsOf(event.target.value)
          if (understood !== undefined) onChange(understood)
        }}
        onBlur={() => isWrong || setTyped(null)}
      />
      {isWrong ? (
        <span className="block text-sm font-medium text-warn">Write minutes, such as 12 or 12.5.</span>
      ) : null}
    </label>
  )
}

/** Seconds of a text in minutes; null when it is empty, undefined when it is no time. */
export function secondsOf(text: string): Seconds | null | undefined {
  const bare = text.trim().replace(',', '.')
  if (bare === '') return null
  if (!/^\d{1,3}(\.\d{1,2})?$/.test(bare)) return undefined
  return Math.round(Number(bare) * secondsInMinute)
}
