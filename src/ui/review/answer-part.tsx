import type { Day } from '#common/time'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay } from '#ui/format-day'
import { Button } from '#ui/page/button'
import { fieldLook } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'

export type ReviewStand = {
  readonly openedOn: Day
  readonly openedBy: string
  readonly finalOn: Day
  readonly isFinal: boolean
  readonly answer: string
  readonly answeredBy: string | null
  readonly answeredOn: Day | null
}

type AnswerPartProps = {
  readonly squadId: string
  readonly termId: string
  readonly review: ReviewStand | null
  readonly canAnswer: boolean
  readonly send: SendForm
}

/** Where the review stands, and what the squad's coach says to it. */
export function AnswerPart({ squadId, termId, review, canAnswer, send }: AnswerPartProps) {
  if (!review) return <p className="text-soft">Not opened yet: the squad’s coach does not see it.</p>
  const fieldId = `answer-${squadId}`
  return (
    <div className="space-y-2">
      <p className="text-soft">
        Opened by {review.openedBy} on {formatDay(review.openedOn)},{' '}
        {review.isFinal ? 'final since' : 'can be answered until it is final on'} {formatDay(review.finalOn)}.
      </p>
      {review.answer ? (
        <blockquote className="max-w-prose border-l-4 border-rule-strong pl-4">
          <p className="whitespace-pre-line">{review.answer}</p>
          <footer className="text-sm text-soft">
            {review.answeredBy}
            {review.answeredOn ? `, ${formatDay(review.answeredOn)}` : ''}
          </footer>
        </blockquote>
      ) : (
        <p>{review.isFinal ? 'The squad’s coach did not answer.' : 'Not answered yet.'}</p>
      )}
      {canAnswer ? (
        <ReplyForm
          send={send}
          refusedTitle="Not answered"
          waiting="Saving…"
          places={{ answer: 'Answer' }}
          className="no-print max-w-prose"
        >
          <input type="hidden" name="squadId" value={squadId} />
          <input type="hidden" name="termId" value={termId} />
          <label htmlFor={fieldId} className="block font-medium">
            Answer of the squad’s coach
          </label>
          <p id={`${fieldId}-hint`} className="text-sm text-soft">
            The head coach reads it. Name no player.
          </p>
          <textarea
            id={fieldId}
            name="answer"
            rows={3}
            defaultValue={review.answer}
            aria-describedby={`${fieldId}-hint`}
            className={`${fieldLook} mt-1`}
          />
          <div className="mt-2">
            <Button weight="plain">Save the answer</Button>
          </div>
        </ReplyForm>
      ) : null}
    </div>
  )
}
