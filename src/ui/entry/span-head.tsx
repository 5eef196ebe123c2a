'use client'

import { sessionMinute } from '#common/session-minute'
import type { LineSpan } from '#match/line-grid'

type SpanHeadProps = {
  readonly span: LineSpan
  readonly numbers: { readonly text: string; readonly count: number }
  readonly isFirst: boolean
  /** Kick-offs cannot be taken out. */
  readonly canRemove: boolean
  readonly onCopy: () => void
  readonly onRemove: () => void
}

/** The head of a stretch of a match: its minutes, how many play in each line, and the stretch before copied in one tap. */
export function SpanHead({ span, numbers, isFirst, canRemove, onCopy, onRemove }: SpanHeadProps) {
  const title = `minute ${sessionMinute(span.start)} to ${sessionMinute(span.end)}`
  return (
    <div className="text-center text-sm leading-tight">
      <span className="block text-xs text-soft">period {span.periodIndex + 1}</span>
      <span className="block font-semibold whitespace-nowrap">
        {sessionMinute(span.start)}–{sessionMinute(span.end)}′
      </span>
      <span className="block text-xs whitespace-nowrap text-soft">
        {numbers.count > 0 ? `${numbers.text} = ${numbers.count}` : '·'}
      </span>
      <span className="mt-1 flex">
        {isFirst ? (
          <span className="h-11" />
        ) : (
          <button
            type="button"
            onClick={onCopy}
            aria-label={`${title}: as before`}
            title="As before"
            className="tap flex-1 cursor-pointer border border-rule-strong bg-leaf text-accent"
          >
            =
          </button>
        )}
        {canRemove ? (
          <button
            type="button"
            onClick={onRemove}
            aria-label={`Take out the change at the start of ${title}`}
            title="Take this change out"
            className="tap -ml-px flex-1 cursor-pointer border border-rule-strong bg-leaf text-accent"
          >
            ×
          </button>
        ) : null}
      </span>
    </div>
  )
}
