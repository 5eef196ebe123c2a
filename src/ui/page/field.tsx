import type { InputHTMLAttributes } from 'react'

type FieldProps = Omit<InputHTMLAttributes<HTMLInputElement>, 'id' | 'name'> & {
  readonly name: string
  /** Needed where a page has two fields of one name. */
  readonly id?: string
  readonly label: string
  readonly hint?: string
  /** What is wrong with what was typed, and what would be right. */
  readonly problem?: string | null
}

export const fieldLook = 'tap block w-full border border-rule-strong bg-leaf px-3 py-2 text-ink'

/** A labelled input. A problem is tied to it, so that a screen reader says it with the field. */
export function Field({ name, id = name, label, hint, problem, ...rest }: FieldProps) {
  const told = [hint ? `${id}-hint` : '', problem ? `${id}-problem` : ''].filter(Boolean).join(' ')
  return (
    <div>
      <label htmlFor={`field-${id}`} className="block font-medium">
        {label}
      </label>
      {hint ? (
        <p id={`${id}-hint`} className="text-sm text-soft">
          {hint}
        </p>
      ) : null}
      <input
        id={`field-${id}`}
        name={name}
        aria-describedby={told || undefined}
        aria-invalid={problem ? true : undefined}
        className={`${fieldLook} mt-1 ${problem ? 'border-2 border-warn' : ''}`}
        {...rest}
      />
      {problem ? (
        <p id={`${id}-problem`} className="mt-1 font-medium text-warn">
          {problem}
        </p>
      ) : null}
    </div>
  )
}
