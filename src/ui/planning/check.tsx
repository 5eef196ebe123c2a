'use client'

/** A box to tick that changes the page at once. */
export function Check({
  label,
  hint,
  isTicked,
  onChange,
}: {
  readonly label: string
  readonly hint?: string
  readonly isTicked: boolean
  readonly onChange: (isTicked: boolean) => void
}) {
  return (
    <label className="tap flex cursor-pointer items-start gap-3 py-1.5">
      <input
        type="checkbox"
        className="size-6 shrink-0 accent-accent"
        checked={isTicked}
        onChange={(event) => onChange(event.target.checked)}
      />
      <span>
        <span className="font-medium">{label}</span>
        {hint ? <span className="block text-sm text-soft">{hint}</span> : null}
      </span>
    </label>
  )
}
