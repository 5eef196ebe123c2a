import type { Day } from '#common/time'
import type { Policy, PolicyVersion } from '#squad/policy'
import type { PolicyHold } from '#squad/policy-history'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay } from '#ui/format-day'
import { Details } from '#ui/page/details'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { listed } from '#ui/plural'
import { heldText } from '#ui/policy/held-text'
import { PolicyForm } from '#ui/policy/policy-form'
import { policySentences } from '#ui/policy/policy-sentences'

type Hold = PolicyHold<PolicyVersion & { readonly madeBy: string | null }> & { readonly madeOn: Day }

export type ShownBand = {
  readonly ageLimit: number | null
  readonly squadNames: readonly string[]
  readonly inForce: Policy
  readonly isOwn: boolean
  readonly history: readonly Hold[]
  readonly newest: Policy
}

type PolicyBodyProps = {
  readonly today: Day
  readonly canChange: boolean
  readonly bands: readonly ShownBand[]
  readonly change: SendForm
}

export function PolicyBody({ today, canChange, bands, change }: PolicyBodyProps) {
  return (
    <>
      {bands.map((band) => (
        <section key={band.ageLimit ?? 'club'}>
          <SectionTitle note={bandNote(band)}>{bandTitle(band)}</SectionTitle>
          {band.ageLimit === null || band.isOwn ? <Sentences policy={band.inForce} /> : null}
          <div className="mt-4">
            {band.history.length > 0 ? <History band={band} /> : null}
            {canChange ? (
              <div className="no-print">
                <Details
                  summary={
                    band.history.length > 0 || band.ageLimit === null
                      ? 'Change these rules'
                      : 'Make rules of its own for this age'
                  }
                >
                  <PolicyForm ageLimit={band.ageLimit} policy={band.newest} today={today} send={change} />
                </Details>
              </div>
            ) : null}
          </div>
        </section>
      ))}
      <section className="max-w-prose">
        <SectionTitle>How matches are played</SectionTitle>
        <p>
          A format can promise more of each match than these rules do.{' '}
          <PageLink href={paths.clubFormats()}>Match formats</PageLink>
        </p>
      </section>
      <section className="max-w-prose text-soft">
        <SectionTitle>How old numbers stay explained</SectionTitle>
        <p>
          Rules are never edited: a change is a new version from a day on, and the old one stays above. The
          middle of a match counts by the rules of its own day. What is about even, and which flags are
          raised, is judged by the rules of today, and for a term that is over by those of its last day.
        </p>
      </section>
    </>
  )
}

function bandTitle({ ageLimit }: ShownBand): string {
  return ageLimit === null ? 'The whole club' : `Under ${ageLimit}`
}

function bandNote({ ageLimit, isOwn, squadNames }: ShownBand): string {
  const whose = squadNames.length > 0 ? `${listed(squadNames)}: ` : ''
  if (ageLimit === null) return 'For every squad whose age has no rules of its own.'
  return `${whose}${isOwn ? 'rules of its own.' : 'the rules of the whole club.'}`
}

function Sentences({ policy }: { readonly policy: Policy }) {
  return (
    <dl className="max-w-prose">
      {policySentences(policy).map(({ about, text }) => (
        <div key={about} className="border-b border-rule py-2 sm:grid sm:grid-cols-[12rem_1fr] sm:gap-x-4">
          <dt className="font-medium text-soft">{about}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  )
}

const stateWords = {
  toCome: 'To come',
  inForce: 'In force',
  past: 'Earlier',
  replacedSameDay: 'Never held',
} as const

/** Versions with what each said otherwise than the rules of today. */
function History({ band }: { readonly band: ShownBand }) {
  return (
    <Details summary={`Versions (${band.history.length})`}>
      <ol>
        {band.history.map((hold) => (
          <li key={hold.version.id} className="border-b border-rule py-3 last:border-b-0">
            <p>
              <strong className="font-semibold">{stateWords[hold.state]}:</strong> {heldText(hold)}
            </p>
            <p className="text-sm text-soft">
              Made{hold.version.madeBy ? ` by ${hold.version.madeBy}` : ''} on {formatDay(hold.madeOn)}
            </p>
            {hold.state === 'inForce' ? null : <Otherwise said={hold.version.policy} now={band.inForce} />}
          </li>
        ))}
      </ol>
    </Details>
  )
}

function Otherwise({ said, now }: { readonly said: Policy; readonly now: Policy }) {
  const today = policySentences(now).map(({ text }) => text)
  const other = policySentences(said).filter(({ text }) => !today.includes(text))
  if (other.length === 0) return <p className="text-sm">It says the same as the rules of today.</p>
  return (
    <>
      <p className="mt-1 text-sm font-medium">Otherwise than today, it says:</p>
      <ul className="max-w-prose list-disc pl-5 text-sm">
        {other.map(({ about, text }) => (
          <li key={about}>{text}</li>
        ))}
      </ul>
    </>
  )
}
