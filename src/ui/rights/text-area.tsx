import { fieldLook } from '#ui/page/field'

type TextAreaProps = {
  readonly name: string
  readonly id?: string
  readonly label: string
  readonly hint?: string
  readonly rows?: number
  readonly maxLength: number
  readonly required?: boolean
  readonly typed?: string
}

/** Several lines of words, with their label. */
export function TextArea({
  name,
  id = name,
  label,
  hint,
  rows = 4,
  maxLength,
  required,
  typed,
}: TextAreaProps) {
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
      <textarea
        id={`field-${id}`}
        name={name}
        rows={rows}
        maxLength={maxLength}
        required={required}
        defaultValue={typed}
        aria-describedby={hint ? `${id}-hint` : undefined}
        className={`${fieldLook} mt-1`}
      />
    </div>
  )
}
