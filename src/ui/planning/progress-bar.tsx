/** How far something is, in the page's one accent. */
export function ProgressBar({
  label,
  value,
  max,
}: {
  readonly label: string
  readonly value: number
  readonly max: number
}) {
  return (
    <progress
      aria-label={label}
      value={value}
      max={max}
      className="h-3 w-40 appearance-none border border-rule-strong bg-band [&::-moz-progress-bar]:bg-accent [&::-webkit-progress-bar]:bg-band [&::-webkit-progress-value]:bg-accent"
    />
  )
}
