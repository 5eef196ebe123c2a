import type { Day } from '#common/time'
import { type Consent, holdsOn } from '#rights/consent'
import { consentKinds, consentName } from '#rights/consent-kind'
import { dayInWords } from '#rights/day-in-words'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'
import { ConsentForm } from '#ui/rights/consent-form'

type Given = Consent & { readonly givenByName: string | null }

type ConsentsPartProps = {
  readonly playerId: string
  readonly today: Day
  readonly locale: string
  readonly guardians: readonly { readonly id: string; readonly name: string }[]
  readonly consents: readonly Given[]
  readonly sends: { readonly consent: SendForm; readonly withdraw: SendForm }
}

/** What guardians agreed to for a child, and the form to write one down. */
export function ConsentsPart(props: ConsentsPartProps) {
  const { playerId, today, guardians, consents, sends } = props
  return (
    <section>
      <SectionTitle note="Whether you need it, and in which words, is for your law and your adviser to say. It is as easily taken back as given.">
        What guardians agreed to
      </SectionTitle>
      {consents.length === 0 ? <p className="text-soft">Nothing is written down.</p> : null}
      <ul className="space-y-4">
        {consents.map((consent) => (
          <OneConsent key={consent.id} consent={consent} {...props} />
        ))}
      </ul>
      {guardians.length === 0 ? (
        <p className="mt-3 text-soft">
          No guardian is written down for this child, so none can agree to anything here.
        </p>
      ) : (
        <Details summary="Write one down">
          <ConsentForm playerId={playerId} today={today} guardians={guardians} send={sends.consent} />
          <h3 className="mt-4 font-medium">Words to begin with</h3>
          <dl className="mt-1 max-w-prose space-y-2 text-sm">
            {consentKinds.map(({ kind, name, wording }) => (
              <div key={kind}>
                <dt className="font-medium">{name}</dt>
                <dd>{wording}</dd>
              </div>
            ))}
          </dl>
        </Details>
      )}
    </section>
  )
}

function OneConsent({
  consent,
  playerId,
  today,
  locale,
  sends,
}: ConsentsPartProps & { readonly consent: Given }) {
  const { id, kind, wording, givenByName, givenOn, withdrawnOn } = consent
  return (
    <li className="max-w-prose border-l-4 border-rule-strong pl-4">
      <p className="font-medium">{consentName(kind)}</p>
      <p className="whitespace-pre-line">“{wording}”</p>
      <p className="text-sm text-soft">
        {givenByName ?? 'Nobody named'}, {dayInWords(givenOn, locale)}
        {withdrawnOn ? `. Taken back on ${dayInWords(withdrawnOn, locale)}.` : ''}
      </p>
      {holdsOn(consent, today) && withdrawnOn === null ? (
        <ReplyForm
          send={sends.withdraw}
          refusedTitle="Not taken back"
          waiting="Saving…"
          places={{ on: 'Taken back on' }}
        >
          <input type="hidden" name="playerId" value={playerId} />
          <input type="hidden" name="consentId" value={id} />
          <div className="mt-1 flex flex-wrap items-end gap-4">
            <Field
              name="on"
              id={`withdrawn-${id}`}
              label="Taken back on"
              type="date"
              required
              min={givenOn}
              max={today}
              defaultValue={today}
            />
            <Button weight="plain">Take it back</Button>
          </div>
        </ReplyForm>
      ) : null}
    </li>
  )
}
