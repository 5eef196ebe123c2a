import type { Day } from '#common/time'
import { type ChildRequest, lastDayOf } from '#rights/child-request'
import { dayInWords } from '#rights/day-in-words'
import { daysLeft } from '#rights/days-left'
import type { SendForm } from '#ui/entry/send-form'
import { Details } from '#ui/page/details'
import { Empty } from '#ui/page/empty'
import { Notice } from '#ui/page/notice'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { ClubRightsForm, type ClubRightsShown } from '#ui/rights/club-rights-form'
import { requestWords } from '#ui/rights/rights-words'
import { WriteDownForm } from '#ui/rights/write-down-form'

type Named = { readonly id: string; readonly name: string }

export type ListedRequest = ChildRequest & {
  readonly playerName: string
  readonly askedByName: string | null
}

type RequestsBodyProps = {
  readonly today: Day
  readonly locale: string
  readonly requests: readonly ListedRequest[]
  readonly rights: ClubRightsShown
  readonly soon:
    | readonly { readonly playerId: string; readonly keptUntil: Day; readonly name: string }[]
    | null
  readonly children: readonly Named[]
  readonly sends: { readonly writeDown: SendForm; readonly rights: SendForm }
}

/** What families have asked, by the day it is to be answered. */
export function RequestsBody(props: RequestsBodyProps) {
  const { today, locale, requests, rights, soon, sends } = props
  const open = requests.filter(({ outcome }) => outcome === null)
  const answered = requests.filter(({ outcome }) => outcome !== null)
  return (
    <>
      <section>
        <SectionTitle>Open</SectionTitle>
        {open.length === 0 ? <Empty>No family is waiting for an answer.</Empty> : null}
        {open.length > 0 ? (
          <ul aria-label="Open requests, the most urgent first" className="border-t border-rule">
            {open.map((request) => (
              <OpenRequest key={request.id} {...{ request, today, locale }} />
            ))}
          </ul>
        ) : null}
      </section>
      {answered.length > 0 ? (
        <Details summary={`Answered: ${answered.length}`}>
          <ul className="space-y-1">
            {answered.map((request) => (
              <li key={request.id}>
                <PageLink href={paths.clubRequest(request.id)}>
                  {requestWords[request.kind]}, {request.playerName}
                </PageLink>{' '}
                <span className="text-soft">came on {dayInWords(request.receivedOn, locale)}</span>
              </li>
            ))}
          </ul>
        </Details>
      ) : null}
      <section>
        <SectionTitle note="Somebody asked you at the gate, or by letter. The month counts from that day, not from today.">
          Write a request down
        </SectionTitle>
        <WriteDownForm today={today} players={props.children} send={sends.writeDown} />
      </section>
      <section>
        <SectionTitle note="Everything that is kept of one child: to read, to hand over, to put right.">
          Children
        </SectionTitle>
        <Details summary={`Choose one of ${props.children.length}`}>
          <ul className="columns-2 gap-x-6 sm:columns-3">
            {props.children.map(({ id, name }) => (
              <li key={id} className="py-1">
                <PageLink href={paths.clubChild(id)}>{name}</PageLink>
              </li>
            ))}
          </ul>
        </Details>
      </section>
      <section>
        <SectionTitle>How long names are kept</SectionTitle>
        <RetentionNotice soon={soon} locale={locale} />
        <ClubRightsForm rights={rights} send={sends.rights} />
      </section>
      <Notice>
        Law differs from place to place. The days here are counted as European and British law counts them.
        Where your law, your club’s rules or your data protection lead say otherwise, they come first.
      </Notice>
    </>
  )
}

type OpenRequestProps = {
  readonly request: ListedRequest
  readonly today: Day
  readonly locale: string
}

function OpenRequest({ request, today, locale }: OpenRequestProps) {
  const due = lastDayOf(request)
  const left = daysLeft(due, today)
  return (
    <li className="border-b border-rule py-2">
      <PageLink href={paths.clubRequest(request.id)}>
        {requestWords[request.kind]}, {request.playerName}
      </PageLink>
      <p className={left.isLate ? 'font-semibold text-warn' : ''}>
        Answer by {dayInWords(due, locale)}. {left.isLate ? 'Overdue: ' : ''}
        {left.words}
        {request.extendedTo ? ', with more time' : ''}.
      </p>
      <p className="text-sm text-soft">
        {request.askedByName ? `Asked by ${request.askedByName}` : 'Asked by word of mouth or by letter'}
      </p>
    </li>
  )
}

function RetentionNotice({ soon, locale }: Pick<RequestsBodyProps, 'soon' | 'locale'>) {
  if (soon === null)
    return (
      <p className="mb-4 max-w-prose border-l-4 border-warn bg-warn-pale px-4 py-2">
        Nobody has decided yet, so names are kept for ever. Decide it with your data protection lead. A common
        choice is a year or two after the season in which a child left.
      </p>
    )
  return (
    <div className="mb-4 max-w-prose">
      {soon.length === 0 ? (
        <p>Nobody’s name goes in the next 60 days.</p>
      ) : (
        <p>In the next 60 days these go by themselves:</p>
      )}
      <ul className="mt-1">
        {soon.map(({ playerId, name, keptUntil }) => (
          <li key={playerId}>
            <PageLink href={paths.clubChild(playerId)}>{name}</PageLink>, kept until{' '}
            {dayInWords(keptUntil, locale)}
          </li>
        ))}
      </ul>
      <p className="mt-1 text-sm text-soft">
        Copies of the whole book that were made before still hold the names. Delete old copies too. A copy
        that is put back erases again who was erased.
      </p>
    </div>
  )
}
