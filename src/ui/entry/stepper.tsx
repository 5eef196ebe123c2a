'use client'

type StepperProps = {
  readonly label: string
  readonly value: number
  readonly least: number
  readonly most: number
  readonly step?: number
  readonly onChange: (value: number) => void
  readonly hideLabel?: boolean
}

const sign =
  'tap w-11 cursor-pointer border border-rule-strong bg-leaf text-xl disabled:cursor-not-allowed disabled:opacity-40'

/** A whole number with − and + beside it; it can be typed too. */
export function Stepper({ label, value, least, most, step = 1, onChange, hideLabel = false }: StepperProps) {
  const set = (next: number) => onChange(Math.min(most, Math.max(least, Math.round(next))))
  return (
    <fieldset className="min-w-0">
      <legend className={hideLabel ? 'sr-only' : 'text-sm font-medium text-soft'}>{label}</legend>
      <div className="flex">
        <button
          type="button"
          className={sign}
          aria-label={`${label}: fewer`}
          disabled={value <= least}
          onClick={() => set(value - step)}
        >
          −
        </button>
        <input
          type="number"
          inputMode="numeric"
          aria-label={label}
          className="tap w-16 border-y border-rule-strong bg-leaf text-center [appearance:textfield]"
          value={value}
          min={least}
          max={most}
          onChange={(event) => event.target.value !== '' && set(Number(event.target.value))}
        />
        <button
          type="button"
          className={sign}
          aria-label={`${label}: more`}
          disabled={value >= most}
          onClick={() => set(value + step)}
        >
          +
        </button>
      </div>
    </fieldset>
  )
}
