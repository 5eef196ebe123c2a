import type { Day } from '#common/time'
import { type ChildRequest, lastDayOf } from '#rights/child-request'
import type { Consent } from '#rights/consent'
import { consentName } from '#rights/consent-kind'
import { dayInWords } from '#rights/day-in-words'
import type { SendForm } from '#ui/entry/send-form'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { AskForm } from '#ui/rights/ask-form'
import { askWords, outcomeWords } from '#ui/rights/rights-words'

type AskBodyProps = {
  readonly child: { readonly id: string; readonly name: string }
  readonly askWhom: string
  readonly locale: string
  readonly requests: readonly ChildRequest[]
  readonly consents: readonly Consent[]
  readonly today: Day
  readonly ask: SendForm
}

/** What a guardian may ask the club about its child, what it has asked, and what it has agreed to. */
export function AskBody({ child, askWhom, locale, requests, consents, ask }: AskBodyProps) {
  return (
    <>
      <p className="max-w-prose">
        The club writes down turns and times of {child.name}. It is yours to see, to have put right, and to
        say no to. The club answers within a month.
      </p>
      {askWhom ? <p className="max-w-prose whitespace-pre-line">You can also speak to: {askWhom}</p> : null}
      <AskForm playerId={child.id} send={ask} />
      <section>
        <SectionTitle note="Only you and the club’s administrator read this.">
          What you have asked
        </SectionTitle>
        {requests.length === 0 ? <p className="text-soft">Nothing so far.</p> : null}
        <ul className="space-y-4">
          {requests.map((request) => (
            <li key={request.id} className="max-w-prose border-l-4 border-rule-strong pl-4">
              <p className="font-medium">
                {askWords[request.kind]}{' '}
                <span className="text-soft">({dayInWords(request.receivedOn, locale)})</span>
              </p>
              {request.text ? <p className="whitespace-pre-line">{request.text}</p> : null}
              <RequestState request={request} locale={locale} />
            </li>
          ))}
        </ul>
      </section>
      <section>
        <SectionTitle note="To take one back, write to the club above. That is as easy as saying yes was.">
          What you have agreed to
        </SectionTitle>
        {consents.length === 0 ? <p className="text-soft">Nothing is written down.</p> : null}
        <ul className="space-y-3">
          {consents.map((consent) => (
            <li key={consent.id} className="max-w-prose">
              <p className="font-medium">{consentName(consent.kind)}</p>
              <p className="whitespace-pre-line">“{consent.wording}”</p>
              <p className="text-sm text-soft">
                Since {dayInWords(consent.givenOn, locale)}
                {consent.withdrawnOn ? `, taken back on ${dayInWords(consent.withdrawnOn, locale)}` : ''}
              </p>
            </li>
          ))}
        </ul>
      </section>
      <p>
        <a href={paths.family(child.id)}>Back to {child.name}’s page</a>
      </p>
    </>
  )
}

function RequestState({ request, locale }: { readonly request: ChildRequest; readonly locale: string }) {
  const { outcome, answer, answeredAt, extendedTo, extendedWhy } = request
  if (outcome !== null)
    return (
      <>
        <p className="mt-1 text-sm text-soft">
          {outcomeWords[outcome]}
          {answeredAt ? `, ${dayInWords(answeredAt.toISOString().slice(0, 10), locale)}` : ''}
        </p>
        <p className="whitespace-pre-line">{answer}</p>
      </>
    )
  return (
    <p className="mt-1 text-sm text-soft">
      The club is to answer by {dayInWords(lastDayOf(request), locale)}.
      {extendedTo ? ` It needs longer: ${extendedWhy}` : ''}
    </p>
  )
}
