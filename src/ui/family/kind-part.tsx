import type { Day } from '#common/time'
import type { FamilyKind } from '#family/family-page'
import { sentencesOn } from '#family/sentences-on'
import {
  aboutText,
  doingLabel,
  familySentenceText,
  matchesPlayedText,
  tooFewText,
} from '#ui/family/family-words'
import { TimePicture, TimeSwatch } from '#ui/family/time-picture'
import { SectionTitle } from '#ui/page/section-title'
import { words } from '#ui/words'

/** What a family reads about practices, or about matches. */
export function KindPart({ of, today }: { readonly of: FamilyKind; readonly today: Day }) {
  const { kind, said } = of
  return (
    <section>
      <SectionTitle>{words.kinds[kind]}</SectionTitle>
      {said ? <Said kind={kind} said={said} today={today} /> : <p>{tooFewText(of)}</p>}
    </section>
  )
}

type SaidProps = {
  readonly kind: FamilyKind['kind']
  readonly said: NonNullable<FamilyKind['said']>
  readonly today: Day
}

function Said({ kind, said, today }: SaidProps) {
  const sentences = sentencesOn(said.sentences, today)
  return (
    <>
      <div className="max-w-prose space-y-2 text-lg">
        {sentences.map((sentence) => (
          <p key={sentence.topic}>{familySentenceText(sentence, kind)}</p>
        ))}
        {said.matches ? <p>{matchesPlayedText(said.matches)}</p> : null}
      </div>
      {said.did.length > 0 ? (
        <figure className="mt-4 max-w-2xl">
          {kind === 'practice' ? <TimePicture did={said.did} /> : null}
          <figcaption>
            <dl className="mt-2 max-w-md">
              {said.did.map(({ doing, minutes, turns }) => (
                <div key={doing} className="flex justify-between gap-4 border-b border-rule py-1.5">
                  <dt className="flex items-center gap-2 font-medium">
                    {kind === 'practice' ? <TimeSwatch doing={doing} /> : null}
                    {doingLabel[kind][doing]}
                  </dt>
                  <dd className="figures text-right">
                    {aboutText(minutes)}
                    {kind === 'practice' && doing !== 'waiting' ? ` in ${words.turns(turns)}` : ''}
                  </dd>
                </div>
              ))}
            </dl>
          </figcaption>
        </figure>
      ) : null}
    </>
  )
}
