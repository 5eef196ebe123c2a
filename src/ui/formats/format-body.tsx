import type { ClubFormat } from '#match/format/club-format'
import type { MatchFormat } from '#match/format/match-format'
import type { PublishedLeastTime } from '#match/format/published-format'
import type { SendForm } from '#ui/entry/send-form'
import { EvenSharePart } from '#ui/formats/even-share-part'
import { FormatOrigin } from '#ui/formats/format-origin'
import { FormatTable } from '#ui/formats/format-table'
import { sourceText } from '#ui/formats/source-text'
import { LinkButton } from '#ui/page/button'
import { OneButtonForm } from '#ui/page/one-button-form'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'

type FormatBodyProps = {
  readonly mayChange: boolean
  readonly format: ClubFormat & { readonly changed: readonly (keyof MatchFormat)[] | null }
  readonly leastTimes: readonly PublishedLeastTime[]
  readonly putAway: SendForm
  readonly takeLeastTime: SendForm
}

/** One format: what it says, where it is from, and how it is changed. */
export function FormatBody(props: FormatBodyProps) {
  const { mayChange, leastTimes } = props
  const { id, format, changed, isPutAway } = props.format
  return (
    <>
      <section aria-label="What it says">
        <FormatTable format={format} />
        <p className="mt-2 max-w-prose text-sm text-soft">
          Where no least time is written here, the <PageLink href={paths.policy()}>fair-play policy</PageLink>{' '}
          says it.
        </p>
      </section>
      <section>
        <SectionTitle>Where it is from</SectionTitle>
        <FormatOrigin format={format} changed={changed} mayChange={mayChange} />
      </section>
      <EvenSharePart format={format} />
      {leastTimes.length > 0 ? (
        <section>
          <SectionTitle note="Promises that bodies make to every player, and that fit this format. Your league’s own rules come first.">
            Rules of least time
          </SectionTitle>
          <ul className="max-w-prose space-y-5">
            {leastTimes.map(({ key, words, source }) => (
              <li key={key} className="border-l-4 border-rule-strong px-4">
                <p>{words}</p>
                <p className="my-1 text-sm break-words text-soft">{sourceText(source)}</p>
                {mayChange ? (
                  <OneButtonForm
                    send={props.takeLeastTime}
                    fields={{ formatId: id, key }}
                    label="Promise this"
                    name={`Promise this: ${source.body}`}
                  />
                ) : null}
              </li>
            ))}
          </ul>
        </section>
      ) : null}
      {mayChange ? (
        <section>
          <SectionTitle>Change it</SectionTitle>
          <LinkButton href={paths.editClubFormat(id)}>Change this format</LinkButton>
          <div className="mt-4">
            <OneButtonForm
              send={props.putAway}
              fields={{ formatId: id, what: isPutAway ? 'takeOut' : 'putAway' }}
              label={isPutAway ? 'Take it out again' : 'Put it away'}
              name={`${isPutAway ? 'Take it out again' : 'Put it away'}: ${format.name}`}
            />
          </div>
        </section>
      ) : null}
      <p>
        <PageLink href={paths.clubFormats()}>All formats</PageLink>
      </p>
    </>
  )
}
