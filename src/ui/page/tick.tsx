type TickProps = {
  readonly name: string
  readonly id?: string
  readonly label: string
  readonly hint?: string
  readonly isTicked: boolean
}

/** A box to tick, with its label to tap. Sent as `on`, and not at all when it is empty. */
export function Tick({ name, id = name, label, hint, isTicked }: TickProps) {
  return (
    <div>
      <label htmlFor={`field-${id}`} className="tap flex cursor-pointer items-center gap-3 font-medium">
        <input
          id={`field-${id}`}
          name={name}
          type="checkbox"
          defaultChecked={isTicked}
          aria-describedby={hint ? `${id}-hint` : undefined}
          className="size-6 shrink-0 accent-accent"
        />
        {label}
      </label>
      {hint ? (
        <p id={`${id}-hint`} className="pl-9 text-sm text-soft">
          {hint}
        </p>
      ) : null}
    </div>
  )
}
