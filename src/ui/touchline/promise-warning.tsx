import { PitchButton } from '#ui/pitch/pitch-button'

type PromiseWarningProps = {
  readonly warnings: readonly {
    readonly id: string
    /** "Bo must come on by 31:00 to have half." */
    readonly sentence: string
    /** "Bring Bo on for Ana now"; null: no change keeps it. */
    readonly change: string | null
    readonly onChange: () => void
  }[]
}

/** A promise of least time that can still be kept, with the change that keeps it. */
export function PromiseWarning({ warnings }: PromiseWarningProps) {
  if (warnings.length === 0) return null
  return (
    <ul className="space-y-2">
      {warnings.map(({ id, sentence, change, onChange }) => (
        <li key={id} role="alert" className="space-y-2 border-4 border-double border-ink p-2">
          <p className="font-semibold">{sentence}</p>
          {change ? (
            <PitchButton weight="main" className="w-full" onClick={onChange}>
              {change}
            </PitchButton>
          ) : null}
        </li>
      ))}
    </ul>
  )
}
