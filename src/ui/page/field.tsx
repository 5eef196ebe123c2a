import type { InputHTMLAttributes } from 'react'
import { type Label, Labelled, saidOf } from '#ui/page/labelled'

type FieldProps = Omit<InputHTMLAttributes<HTMLInputElement>, 'id' | 'name'> &
  Label & {
    readonly name: string
    /** Needed where a page has two fields of one name. */
    readonly id?: string
  }

export const fieldLook = 'tap block w-full border border-rule-strong bg-leaf px-3 py-2 text-ink'

/** A labelled input. */
export function Field({ name, id = name, label, hint, problem, ...rest }: FieldProps) {
  const own = { label, hint, problem }
  return (
    <Labelled id={id} {...own}>
      <input
        name={name}
        {...saidOf(id, own)}
        className={`${fieldLook} mt-1 ${problem ? 'border-2 border-warn' : ''}`}
        {...rest}
      />
    </Labelled>
  )
}
