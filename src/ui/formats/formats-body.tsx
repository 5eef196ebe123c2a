import type { ClubFormat } from '#match/format/club-format'
import type { PublishedFormat } from '#match/format/published-format'
import type { Squad } from '#squad/squad'
import type { SendForm } from '#ui/entry/send-form'
import { formatInShort } from '#ui/formats/format-sentences'
import { PublishedList } from '#ui/formats/published-list'
import { SquadFormatForm } from '#ui/formats/squad-format-form'
import { LinkButton } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Empty } from '#ui/page/empty'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { listed } from '#ui/plural'

type Listed = ClubFormat & { readonly squadNames: readonly string[] }

type FormatsBodyProps = {
  readonly mayChange: boolean
  readonly formats: readonly Listed[]
  readonly squads: readonly (Squad & { readonly formatId: string | null })[]
  readonly published: readonly PublishedFormat[]
  readonly take: SendForm
  readonly choose: SendForm
}

/** How matches are played: by which squad, the club's formats, and those it can take over. */
export function FormatsBody({ mayChange, formats, squads, published, take, choose }: FormatsBodyProps) {
  const offered = formats.filter(({ isPutAway }) => !isPutAway)
  const away = formats.filter(({ isPutAway }) => isPutAway)
  const isOurs = ({ format }: PublishedFormat) => format.source === null
  return (
    <>
      {squads.length > 0 ? (
        <section>
          <SectionTitle note="A line-up begins with it. The coach can change it for one match.">
            What each squad plays
          </SectionTitle>
          {mayChange && offered.length > 0 ? (
            <div className="space-y-3">
              {squads.map((squad) => (
                <SquadFormatForm key={squad.id} squad={squad} formats={offered} send={choose} />
              ))}
            </div>
          ) : (
            <WhatIsPlayed squads={squads} formats={formats} />
          )}
        </section>
      ) : null}
      <section>
        <SectionTitle>The club’s formats</SectionTitle>
        {offered.length > 0 ? (
          <FormatList formats={offered} />
        ) : (
          <Empty>
            The club has no format yet.{' '}
            {mayChange ? 'Take one over below, or write your own.' : 'The head coach can take one over.'}
          </Empty>
        )}
        {mayChange ? (
          <p className="mt-4">
            <LinkButton href={paths.newClubFormat()}>Write a format of your own</LinkButton>
          </p>
        ) : null}
        {away.length > 0 ? (
          <div className="mt-4 max-w-3xl">
            <Details summary={`Put away (${away.length})`}>
              <FormatList formats={away} />
            </Details>
          </div>
        ) : null}
      </section>
      <Published
        title="As published"
        note="By governing bodies, for the season that is named, where it could be read. Your league’s own rules come first."
        published={published.filter((one) => !isOurs(one))}
        take={mayChange ? take : null}
      />
      <Published
        title="To begin with"
        note="Ours, of every size. Common practice: no body says so."
        published={published.filter(isOurs)}
        take={mayChange ? take : null}
      />
    </>
  )
}

function WhatIsPlayed({ squads, formats }: Pick<FormatsBodyProps, 'squads' | 'formats'>) {
  return (
    <ul className="max-w-prose">
      {squads.map(({ id, name, formatId }) => (
        <li key={id} className="border-b border-rule py-2">
          <strong className="font-semibold">{name}:</strong>{' '}
          {formats.find((one) => one.id === formatId)?.format.name ??
            'nothing is chosen; the coach says for each match'}
        </li>
      ))}
    </ul>
  )
}

function FormatList({ formats }: { readonly formats: readonly Listed[] }) {
  return (
    <ul className="max-w-3xl">
      {formats.map(({ id, format, squadNames }) => (
        <li key={id} className="border-b border-rule py-2">
          <PageLink href={paths.clubFormat(id)} className="tap inline-flex items-center font-medium">
            {format.name}
          </PageLink>
          <p className="text-sm text-soft">
            {formatInShort(format)}
            {squadNames.length > 0 ? `. Played by ${listed(squadNames)}.` : ''}
          </p>
        </li>
      ))}
    </ul>
  )
}

type PublishedProps = {
  readonly title: string
  readonly note: string
  readonly published: readonly PublishedFormat[]
  readonly take: SendForm | null
}

function Published({ title, note, published, take }: PublishedProps) {
  if (published.length === 0) return null
  return (
    <section>
      <SectionTitle note={note}>{title}</SectionTitle>
      <PublishedList published={published} take={take} />
    </section>
  )
}
