'use client'

import { type Mark, nextMark, passMark } from '#practice/grid-mark'

/** What a tap on a cell does: go through the marks one by one, or set one at once. */
export const brushes = ['next', 'A', 'D', 'K', 'W', 'passed', 'empty'] as const
export type Brush = (typeof brushes)[number]

const labels: Readonly<Record<Brush, { readonly text: string; readonly word: string }>> = {
  next: { text: '↻', word: 'a tap goes through A, D, K, W' },
  A: { text: 'A', word: 'attacking' },
  D: { text: 'D', word: 'defending' },
  K: { text: 'K', word: 'in goal' },
  W: { text: 'W', word: 'waiting' },
  passed: { text: 'p', word: 'was offered, passed' },
  empty: { text: '⌫', word: 'empty the cell' },
}

/** The mark that a tap with a brush leaves in a cell. A second tap with the same letter empties it again. */
export function markAfterTap(mark: Mark, brush: Brush): Mark {
  if (brush === 'next') return nextMark(mark)
  if (brush === 'passed') return passMark(mark)
  if (brush === 'empty') return ''
  return mark === brush ? '' : brush
}

export function BrushBar({
  brush,
  onBrush,
}: {
  readonly brush: Brush
  readonly onBrush: (brush: Brush) => void
}) {
  return (
    <fieldset>
      <legend className="sr-only">What a tap on a cell sets</legend>
      <div className="flex">
        {brushes.map((one) => (
          <button
            key={one}
            type="button"
            aria-pressed={one === brush}
            aria-label={labels[one].word}
            title={labels[one].word}
            onClick={() => onBrush(one)}
            className="tap -mr-px min-w-10 flex-1 cursor-pointer border border-rule-strong bg-leaf px-1.5 font-medium aria-pressed:border-accent aria-pressed:bg-accent aria-pressed:text-white sm:min-w-12"
          >
            {labels[one].text}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
