'use client'

type TapChoice = { readonly text: string; readonly word: string }

/** What a tap on a cell sets: one button a choice, the letter to see and the word to hear. */
export function TapChoices<Brush extends string>({
  choices,
  brush,
  onBrush,
}: {
  readonly choices: Readonly<Record<Brush, TapChoice>>
  readonly brush: Brush
  readonly onBrush: (brush: Brush) => void
}) {
  return (
    <fieldset>
      <legend className="sr-only">What a tap on a cell sets</legend>
      <div className="flex">
        {(Object.keys(choices) as Brush[]).map((one) => (
          <button
            key={one}
            type="button"
            aria-pressed={one === brush}
            aria-label={choices[one].word}
            title={choices[one].word}
            onClick={() => onBrush(one)}
            className="tap -mr-px min-w-10 flex-1 cursor-pointer border border-rule-strong bg-leaf px-1.5 font-medium aria-pressed:border-accent aria-pressed:bg-accent aria-pressed:text-white sm:min-w-12"
          >
            {choices[one].text}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
