import type { Day } from '#common/time'
import { lastDayOf, requestLimits } from '#rights/child-request'
import { dayInWords } from '#rights/day-in-words'
import { daysLeft } from '#rights/days-left'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Field } from '#ui/page/field'
import { Notice } from '#ui/page/notice'
import { PageLink } from '#ui/page/page-link'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'
import { TextArea } from '#ui/page/text-area'
import { paths } from '#ui/paths'
import { AnswerForm } from '#ui/rights/answer-form'
import type { ListedRequest } from '#ui/rights/requests-body'
import { outcomeWords, requestWords } from '#ui/rights/rights-words'
import { WhatToDo } from '#ui/rights/what-to-do'

type RequestBodyProps = {
  readonly today: Day
  readonly locale: string
  readonly request: ListedRequest & { readonly erasedAt: Date | null }
  readonly guardians: readonly { readonly id: string; readonly name: string }[]
  readonly squadIds: readonly string[]
  readonly whyNotExtend: 'answered' | 'extended' | 'tooLate' | null
  readonly latest: Day
  readonly sends: { readonly extend: SendForm; readonly answer: SendForm }
}

/** One request: what was asked, what to do, more time, the answer. */
export function RequestBody(props: RequestBodyProps) {
  const { today, locale, request, guardians, latest, sends } = props
  const left = daysLeft(lastDayOf(request), today)
  return (
    <>
      <section className="max-w-prose space-y-2">
        <p>
          {requestWords[request.kind]}, about{' '}
          {request.erasedAt ? (
            request.playerName
          ) : (
            <PageLink href={paths.clubChild(request.playerId)}>{request.playerName}</PageLink>
          )}
          . Asked by {request.askedByName ?? 'word of mouth or letter'} on{' '}
          {dayInWords(request.receivedOn, locale)}.
        </p>
        {request.text ? (
          <blockquote className="border-l-4 border-rule-strong pl-4 whitespace-pre-line">
            {request.text}
          </blockquote>
        ) : (
          <p className="text-soft">Without further words.</p>
        )}
        {request.outcome === null ? (
          <p className={left.isLate ? 'font-semibold text-warn' : 'font-medium'}>
            To be answered by {dayInWords(lastDayOf(request), locale)}:{' '}
            {left.isLate ? `overdue, ${left.words}` : left.words}.
          </p>
        ) : null}
        {request.extendedTo ? (
          <p className="text-soft">More time was taken, and the family reads why: {request.extendedWhy}</p>
        ) : null}
      </section>
      {request.outcome === null ? (
        <>
          <WhatToDo request={request} guardians={guardians} squadIds={props.squadIds} />
          <section>
            <SectionTitle
              note={
                request.askedByName
                  ? 'The guardian who asked reads it on the child’s page.'
                  : 'Tell the family yourself: no guardian asked it here.'
              }
            >
              Answer
            </SectionTitle>
            <AnswerForm requestId={request.id} send={sends.answer} />
          </section>
          {props.whyNotExtend === null ? (
            <Details summary="It takes longer">
              <ReplyForm
                send={sends.extend}
                refusedTitle="Nothing was changed"
                waiting="Saving…"
                places={{ to: 'New day', why: 'Why' }}
              >
                <div className="max-w-prose space-y-4">
                  <input type="hidden" name="requestId" value={request.id} />
                  <p className="text-soft">
                    Only where it is hard to answer, once, and while the first month lasts: up to two months
                    more. The family reads the reason.
                  </p>
                  <Field
                    name="to"
                    label="New day"
                    type="date"
                    required
                    min={request.dueOn}
                    max={latest}
                    defaultValue={latest}
                  />
                  <TextArea name="why" label="Why" rows={2} maxLength={requestLimits.why} required />
                  <Button weight="plain">Take more time</Button>
                </div>
              </ReplyForm>
            </Details>
          ) : null}
        </>
      ) : (
        <section className="max-w-prose">
          <SectionTitle>Answered: {outcomeWords[request.outcome].toLowerCase()}</SectionTitle>
          <p className="whitespace-pre-line">{request.answer || 'Its words went with the child’s name.'}</p>
        </section>
      )}
      <Notice>
        Make sure who asks, before you hand anything over. What a family may ask, and when you may refuse, is
        for your law and your data protection lead to say.
      </Notice>
    </>
  )
}
