'use client'

import { useId } from 'react'
import { FieldProblem } from '#ui/designs/form/number-field'
import { fieldLook } from '#ui/page/field'

type TextFieldProps = {
  readonly label: string
  readonly value: string
  readonly hint?: string
  readonly problem?: string | null
  readonly most: number
  /** Lines to see; 1 is a single line. */
  readonly lines?: number
  readonly onChange: (value: string) => void
}

/** A text of a form that is sent whole. */
export function TextField({ label, value, hint, problem, most, lines = 1, onChange }: TextFieldProps) {
  const id = useId()
  const own = {
    id,
    value,
    maxLength: most,
    className: `${fieldLook} mt-1 ${problem ? 'border-2 border-warn' : ''}`,
    'aria-invalid': problem ? true : undefined,
    'aria-describedby': problem ? `${id}-problem` : undefined,
  } as const
  return (
    <div className="w-full max-w-prose">
      <label htmlFor={id} className="block text-sm font-medium text-soft">
        {label}
        {hint ? <span className="font-normal"> ({hint})</span> : null}
      </label>
      {lines > 1 ? (
        <textarea {...own} rows={lines} onChange={(event) => onChange(event.target.value)} />
      ) : (
        <input {...own} onChange={(event) => onChange(event.target.value)} />
      )}
      <FieldProblem id={`${id}-problem`} text={problem} />
    </div>
  )
}
