'use client'

import { useId, useState } from 'react'
import { fieldLook } from '#ui/page/field'

type NumberFieldProps = {
  readonly label: string
  readonly value: number
  readonly unit?: string
  readonly hint?: string
  readonly problem?: string | null
  /** What is no number at all comes as NaN. */
  readonly onChange: (value: number) => void
}

/** A number that may be typed freely: what makes no sense is said beside it, and not silently put right. */
export function NumberField({ label, value, unit, hint, problem, onChange }: NumberFieldProps) {
  const [typed, setTyped] = useState<string | null>(null)
  const id = useId()
  return (
    <div className="max-w-56">
      <label htmlFor={id} className="block text-sm font-medium text-soft">
        {label}
        {hint ? <span className="font-normal"> ({hint})</span> : null}
      </label>
      <span className="mt-1 flex items-center gap-2">
        <input
          id={id}
          inputMode="decimal"
          className={`${fieldLook} w-24! tabular-nums ${problem ? 'border-2 border-warn' : ''}`}
          value={typed ?? (Number.isNaN(value) ? '' : String(value))}
          aria-invalid={problem ? true : undefined}
          aria-describedby={problem ? `${id}-problem` : undefined}
          onChange={(event) => {
            setTyped(event.target.value)
            onChange(numberOf(event.target.value))
          }}
          onBlur={() => Number.isNaN(value) || setTyped(null)}
        />
        {unit}
      </span>
      <FieldProblem id={`${id}-problem`} text={problem} />
    </div>
  )
}

/** "12", "12.5" and "12,5"; all else is NaN. */
export function numberOf(text: string): number {
  const bare = text.trim().replace(',', '.')
  return /^-?\d{1,5}(\.\d{1,3})?$/.test(bare) ? Number(bare) : Number.NaN
}

type FieldProblemProps = { readonly id?: string; readonly text: string | null | undefined }

/** What is wrong with the field above it, and what would be right. */
export function FieldProblem({ id, text }: FieldProblemProps) {
  return text ? (
    <p id={id} className="mt-1 max-w-prose font-medium text-warn">
      {text}
    </p>
  ) : null
}
