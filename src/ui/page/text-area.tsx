import { fieldLook } from '#ui/page/field'
import { Labelled, saidOf } from '#ui/page/labelled'

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
export function TextArea({ name, id = name, label, hint, rows = 4, typed, ...rest }: TextAreaProps) {
  const own = { label, hint }
  return (
    <Labelled id={id} {...own}>
      <textarea
        name={name}
        {...saidOf(id, own)}
        rows={rows}
        defaultValue={typed}
        className={`${fieldLook} mt-1`}
        {...rest}
      />
    </Labelled>
  )
}
