'use client'

import { type LineMark, nextLineMark } from '#match/line-mark'

export const lineBrushes = ['next', 'K', 'B', 'M', 'F', 'O'] as const
export type LineBrush = (typeof lineBrushes)[number]

const labels: Readonly<Record<LineBrush, string>> = {
  next: 'a tap goes through K, B, M, F, O',
  K: 'keeper',
  B: 'back',
  M: 'middle',
  F: 'forward',
  O: 'off',
}

/** The mark that a tap with a brush leaves; a second tap with the same letter empties the cell. */
export function lineAfterTap(mark: LineMark, brush: LineBrush): LineMark {
  if (brush === 'next') return nextLineMark(mark)
  return mark === brush ? '' : brush
}

export function LineBrushBar({
  brush,
  onBrush,
}: {
  readonly brush: LineBrush
  readonly onBrush: (brush: LineBrush) => void
}) {
  return (
    <fieldset>
      <legend className="sr-only">What a tap on a cell sets</legend>
      <div className="flex">
        {lineBrushes.map((one) => (
          <button
            key={one}
            type="button"
            aria-pressed={one === brush}
            aria-label={labels[one]}
            title={labels[one]}
            onClick={() => onBrush(one)}
            className="tap -mr-px min-w-10 flex-1 cursor-pointer border border-rule-strong bg-leaf px-1.5 font-medium aria-pressed:border-accent aria-pressed:bg-accent aria-pressed:text-white sm:min-w-12"
          >
            {one === 'next' ? '↻' : one}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
