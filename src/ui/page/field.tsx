import type { InputHTMLAttributes } from 'react'

type FieldProps = Omit<InputHTMLAttributes<HTMLInputElement>, 'id' | 'name'> & {
  readonly name: string
  readonly label: string
  readonly hint?: string
  /** What is wrong with what was typed, and what would be right. */
  readonly problem?: string | null
}

export const fieldLook = 'tap block w-full border border-rule-strong bg-leaf px-3 py-2 text-ink'

/** A labelled input. A problem is tied to it, so that a screen reader says it with the field. */
export function Field({ name, label, hint, problem, ...rest }: FieldProps) {
  const told = [hint ? `${name}-hint` : '', problem ? `${name}-problem` : ''].filter(Boolean).join(' ')
  return (
    <div>
      <label htmlFor={`field-${name}`} className="block font-medium">
        {label}
      </label>
      {hint ? (
        <p id={`${name}-hint`} className="text-sm text-soft">
          {hint}
        </p>
      ) : null}
      <input
        id={`field-${name}`}
        name={name}
        aria-describedby={told || undefined}
        aria-invalid={problem ? true : undefined}
        className={`${fieldLook} mt-1 ${problem ? 'border-2 border-warn' : ''}`}
        {...rest}
      />
      {problem ? (
        <p id={`${name}-problem`} className="mt-1 font-medium text-warn">
          {problem}
        </p>
      ) : null}
    </div>
  )
}
