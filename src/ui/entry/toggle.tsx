'use client'

import type { ReactNode } from 'react'

type ToggleOption<Value extends string> = { readonly value: Value; readonly label: ReactNode }

type ToggleProps<Value extends string> = {
  readonly label: string
  readonly hideLabel?: boolean
  readonly options: readonly ToggleOption<Value>[]
  readonly value: Value
  readonly onChange: (value: Value) => void
}

/** One of a few, all in sight. */
export function Toggle<Value extends string>({
  label,
  hideLabel = false,
  options,
  value,
  onChange,
}: ToggleProps<Value>) {
  return (
    <fieldset>
      <legend className={hideLabel ? 'sr-only' : 'text-sm font-medium text-soft'}>{label}</legend>
      <div className="flex flex-wrap">
        {options.map((option) => (
          <button
            key={option.value}
            type="button"
            aria-pressed={option.value === value}
            onClick={() => onChange(option.value)}
            className="tap -mr-px -mb-px cursor-pointer border border-rule-strong bg-leaf px-3 text-ink hover:bg-paper aria-pressed:border-accent aria-pressed:bg-accent aria-pressed:text-white"
          >
            {option.label}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
