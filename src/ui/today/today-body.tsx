import type { Day } from '#common/time'
import type { Squad } from '#squad/squad'
import { formatDay } from '#ui/format-day'
import { LinkButton } from '#ui/page/button'
import { Empty } from '#ui/page/empty'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { WholePageLinkButton } from '#ui/page/whole-page-link-button'
import { paths } from '#ui/paths'
import { counted } from '#ui/plural'
import { Cures, type TodayCure } from '#ui/today/cures'
import { words } from '#ui/words'

type ShownSession = {
  readonly id: string
  readonly kind: 'practice' | 'match'
  readonly day: Day
  readonly title: string
  readonly startsAt: string | null
}

type TodayBodyProps = {
  readonly squad: Squad
  readonly today: Day
  readonly next:
    | (ShownSession & {
        readonly design: { readonly id: string; readonly name: string } | null
        readonly themeName: string | null
        readonly isTapped: boolean
        readonly isPlanned: boolean
      })
    | null
  /** Others of the next one's day. */
  readonly alsoThatDay: readonly ShownSession[]
  /** `isTapped`: at the pitch, and only to be looked at. */
  readonly toWrite: readonly (ShownSession & { readonly isTapped: boolean })[]
  readonly cures: readonly TodayCure[]
  readonly openFlags: number
  readonly players: readonly { readonly id: string; readonly name: string }[]
}

const mostToWrite = 5

export function TodayBody(props: TodayBodyProps) {
  const { squad, today, next, alsoThatDay, toWrite, cures, openFlags, players } = props
  const names = new Map(players.map(({ id, name }) => [id, name]))
  return (
    <div className="grid gap-x-12 gap-y-10 lg:grid-cols-[3fr_2fr]">
      <section>
        <SectionTitle>Who needs what</SectionTitle>
        {cures.length > 0 ? (
          <Cures cures={cures} nameOf={(id) => names.get(id) ?? 'a player'} />
        ) : (
          <Empty>Nobody is asking for anything: no flag is open.</Empty>
        )}
        {openFlags > 0 ? (
          <p className="mt-4">
            <LinkButton href={paths.flags(squad.id)}>All open flags ({openFlags})</LinkButton>
          </p>
        ) : null}
      </section>
      <div className="space-y-10">
        <section>
          <SectionTitle>Next</SectionTitle>
          {next ? (
            <NextSession squad={squad} next={next} today={today} />
          ) : (
            <Empty next={<FirstThing squad={squad} hasPlayers={players.length > 0} />}>
              {players.length > 0 ? 'No practice or match is planned.' : 'Nobody belongs to this squad yet.'}
            </Empty>
          )}
          {alsoThatDay.map((session) => (
            <p key={session.id} className="mt-2">
              On the same day:{' '}
              <PageLink
                href={paths.session(squad.id, { sessionId: session.id })}
                className="tap inline-flex items-center"
              >
                {nameOfSession(session)}
              </PageLink>
            </p>
          ))}
        </section>
        <section>
          <SectionTitle>Not written down yet</SectionTitle>
          {toWrite.length === 0 ? (
            <p className="text-soft">Everything that was held is written down.</p>
          ) : null}
          <ul>
            {toWrite.slice(0, mostToWrite).map((session) => (
              <li key={session.id} className="border-b border-rule">
                <PageLink
                  href={(session.isTapped ? paths.whistle : paths.session)(squad.id, {
                    sessionId: session.id,
                  })}
                  className="tap flex items-center py-2"
                >
                  {nameOfSession(session)}
                  {session.isTapped ? ': tapped, to be looked at' : ''}
                </PageLink>
              </li>
            ))}
          </ul>
          {toWrite.length > mostToWrite ? (
            <p className="mt-2">
              <PageLink href={paths.sessions(squad.id)} className="tap inline-flex items-center">
                and {counted(toWrite.length - mostToWrite, 'more session')}
              </PageLink>
            </p>
          ) : null}
        </section>
      </div>
    </div>
  )
}

type NextSessionProps = Pick<TodayBodyProps, 'squad' | 'today'> & {
  readonly next: NonNullable<TodayBodyProps['next']>
}

function NextSession({ squad, next, today }: NextSessionProps) {
  return (
    <>
      <p className="font-medium">
        {next.day === today ? 'Today: ' : ''}
        <PageLink
          href={paths.session(squad.id, { sessionId: next.id })}
          className="tap inline-flex items-center"
        >
          {nameOfSession(next)}
        </PageLink>
      </p>
      {next.design || next.themeName ? (
        <p className="text-soft">
          {next.design ? (
            <PageLink
              href={paths.design(squad.id, { designId: next.design.id })}
              className="tap inline-flex items-center"
            >
              {next.design.name}
            </PageLink>
          ) : null}
          {next.design && next.themeName ? ', ' : ''}
          {next.themeName}
        </p>
      ) : null}
      <p className="mt-2">
        <LinkButton
          href={
            next.kind === 'practice'
              ? paths.plan(squad.id, { sessionId: next.id })
              : paths.lineUp(squad.id, { sessionId: next.id })
          }
          weight={next.isPlanned ? 'plain' : 'main'}
        >
          {words[next.kind === 'practice' ? 'plan' : 'lineUp'][next.isPlanned ? 'look' : 'make']}
        </LinkButton>
      </p>
      {next.isTapped && next.day === today ? (
        <p className="mt-2">
          <LinkButton href={paths.whistle(squad.id, { sessionId: next.id })}>After the whistle</LinkButton>
        </p>
      ) : null}
      <p className="mt-2">
        <WholePageLinkButton href={paths.pitch(next.id)} weight={next.isPlanned ? 'main' : 'plain'}>
          To the pitch
        </WholePageLinkButton>
      </p>
    </>
  )
}

function nameOfSession({ kind, day, title, startsAt }: ShownSession): string {
  const when = startsAt ? `${formatDay(day)}, ${startsAt}` : formatDay(day)
  return `${words.kind[kind]}, ${when}${title ? `: ${title}` : ''}`
}

/** What a squad without a session to come needs next: its players, or a session. */
function FirstThing({ squad, hasPlayers }: { readonly squad: Squad; readonly hasPlayers: boolean }) {
  if (hasPlayers) return <LinkButton href={paths.newSession(squad.id)}>New practice or match</LinkButton>
  return (
    <p className="flex flex-wrap gap-3">
      <LinkButton href={paths.players(squad.id)}>Add players one by one</LinkButton>
      <LinkButton href={paths.files(squad.id)}>Take in a list of players</LinkButton>
    </p>
  )
}
