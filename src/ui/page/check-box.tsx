'use client'

type CheckBoxProps = {
  readonly label: string
  readonly hint?: string
  readonly isTicked: boolean
  readonly onChange: (isTicked: boolean) => void
}

/** A box to tick that changes the page at once; `Tick` is one that is sent with its form. */
export function CheckBox({ label, hint, isTicked, onChange }: CheckBoxProps) {
  return (
    <label className="tap flex max-w-prose cursor-pointer items-center gap-3 py-1">
      <input
        type="checkbox"
        checked={isTicked}
        className="size-6 shrink-0 accent-accent"
        onChange={(event) => onChange(event.target.checked)}
      />
      <span>
        <span className="font-medium">{label}</span>
        {hint ? <span className="block text-sm text-soft">{hint}</span> : null}
      </span>
    </label>
  )
}
