import type { ReactNode } from 'react'

export type Label = {
  readonly label: string
  readonly hint?: string
  /** What is wrong with what was typed, and what would be right. */
  readonly problem?: string | null
}

/** What ties a hint and a problem to the field they speak of, so that a screen reader says them with it. */
export function saidOf(id: string, { hint, problem }: Label) {
  const told = [hint ? `${id}-hint` : '', problem ? `${id}-problem` : ''].filter(Boolean).join(' ')
  return {
    id: `field-${id}`,
    'aria-describedby': told || undefined,
    'aria-invalid': problem ? true : undefined,
  } as const
}

type LabelledProps = Label & { readonly id: string; readonly children: ReactNode }

/** A field, its label and its hint above it, and below it what is wrong. */
export function Labelled({ id, label, hint, problem, children }: LabelledProps) {
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
      {children}
      {problem ? (
        <p id={`${id}-problem`} className="mt-1 font-medium text-warn">
          {problem}
        </p>
      ) : null}
    </div>
  )
}
