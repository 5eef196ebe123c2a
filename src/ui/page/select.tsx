import type { SelectHTMLAttributes } from 'react'
import { fieldLook } from '#ui/page/field'

export type Option = { readonly value: string; readonly label: string }

type SelectProps = Omit<SelectHTMLAttributes<HTMLSelectElement>, 'id' | 'name'> & {
  readonly name: string
  /** Needed where a page has two fields of one name. */
  readonly id?: string
  readonly label: string
  readonly options: readonly Option[]
}

export function Select({ name, id = name, label, options, ...rest }: SelectProps) {
  return (
    <div>
      <label htmlFor={`field-${id}`} className="block text-sm font-medium text-soft">
        {label}
      </label>
      <select id={`field-${id}`} name={name} className={`${fieldLook} mt-1`} {...rest}>
        {options.map(({ value, label: text }) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </select>
    </div>
  )
}
