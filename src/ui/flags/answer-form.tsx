import { shortAnswers } from '#fairness/flags/short-answers'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { fieldLook } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'

type AnswerFormProps = { readonly flagId: string; readonly send: SendForm }

/** One tap from the short list, or a coach's own words. */
export function AnswerForm({ flagId, send }: AnswerFormProps) {
  const fieldId = `own-words-${flagId}`
  return (
    <ReplyForm
      send={send}
      refusedTitle="Not answered"
      waiting="Answering…"
      places={{ ownWords: 'Own words' }}
      className="no-print"
    >
      <input type="hidden" name="flagId" value={flagId} />
      <p className="text-sm font-medium text-soft">Answer</p>
      <div className="mt-1 flex flex-wrap gap-2">
        {shortAnswers.map(({ text }) => (
          <Button key={text} weight="plain" name="reason" value={text} className="px-2.5! text-sm">
            {text}
          </Button>
        ))}
      </div>
      <details>
        <summary className="tap inline-flex items-center text-sm text-accent underline underline-offset-4">
          In own words
        </summary>
        <div className="flex max-w-prose flex-wrap items-end gap-2">
          <div className="grow">
            <label htmlFor={fieldId} className="block text-sm font-medium">
              Own words, for the coaches of the squad only
            </label>
            <input id={fieldId} name="ownWords" maxLength={300} className={fieldLook} />
          </div>
          <Button weight="plain">Answer</Button>
        </div>
      </details>
    </ReplyForm>
  )
}
