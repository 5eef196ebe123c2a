import type { ReactNode } from 'react'
import type { Day } from '#common/time'
import type { Evenness } from '#fairness/evenness'
import type { LeastTimeKept } from '#fairness/matches/least-time-kept'
import type { Squad } from '#squad/squad'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay } from '#ui/format-day'
import { leastTimeSentence } from '#ui/matches/match-sentences'
import { Details } from '#ui/page/details'
import { PageLink } from '#ui/page/page-link'
import { paths, withChoices } from '#ui/paths'
import { listed } from '#ui/plural'
import { AnswerPart, type ReviewStand } from '#ui/review/answer-part'
import { beforeSentence, evennessSentence } from '#ui/review/evenness-words'
import { HandOverForm } from '#ui/review/hand-over-form'
import { IndicesPart } from '#ui/review/indices-part'
import { WrittenBar } from '#ui/review/written-bar'
import { words } from '#ui/words'

type FlagCounts = { readonly open: number; readonly answered: number; readonly cleared: number }

export type ReviewedSquad = {
  readonly squad: Squad
  readonly coaches: readonly { readonly personName: string; readonly kind: 'coach' | 'cover' }[]
  readonly covered: readonly { readonly personName: string; readonly sessions: number }[]
  readonly figures: Readonly<Record<'practice' | 'match', Evenness>>
  readonly before: Readonly<Record<'practice' | 'match', Evenness>> | null
  readonly leastTime: LeastTimeKept
  readonly flags: FlagCounts & { readonly byKind: Readonly<Record<'practice' | 'match', FlagCounts>> }
  readonly coverage: {
    readonly onCourse: { readonly themes: number; readonly of: number }
    readonly neverMet: readonly string[]
  }
  readonly review: ReviewStand | null
  readonly canAnswer: boolean
  readonly luck: 'open' | { readonly from: Day } | null
}

type SquadPartProps = {
  readonly reviewed: ReviewedSquad
  readonly termId: string
  readonly termBeforeName: string | null
  readonly today: Day
  readonly coaches: readonly { readonly id: string; readonly name: string }[]
  readonly answer: SendForm
  readonly handOver: SendForm
}

const kinds = ['practice', 'match'] as const

/** A squad's term: what it rests on first, then what it says, then what is done about it. */
export function SquadPart({ reviewed, termId, termBeforeName, today, ...rest }: SquadPartProps) {
  const { squad, figures, before, flags, review, canAnswer } = reviewed
  return (
    <section
      aria-labelledby={`squad-${squad.id}`}
      className="page-of-its-own border-t-2 border-rule-strong pt-5"
    >
      <h2 id={`squad-${squad.id}`} className="text-xl font-semibold">
        <PageLink href={withChoices(paths.book(squad.id), { term: termId })}>{squad.name}</PageLink>
      </h2>
      <p className="text-soft">{coachesText(reviewed)}</p>
      <dl className="mt-3 max-w-3xl">
        {kinds.map((kind) => (
          <Line key={kind} term={words.kinds[kind]}>
            <WrittenBar count={figures[kind].written} />
            <p className="mt-1 font-medium">{evennessSentence(figures[kind])}</p>
            {kind === 'match' && reviewed.leastTime.matches > 0 ? (
              <p className="mt-1">
                {leastTimeSentence(reviewed.leastTime)}{' '}
                <PageLink href={withChoices(paths.matches(squad.id), { term: termId })}>
                  Match by match
                </PageLink>
              </p>
            ) : null}
            <p className="text-sm text-soft">
              {beforeSentence(before?.[kind] ?? null, termBeforeName) ?? 'No earlier term to set beside it.'}
            </p>
          </Line>
        ))}
        <Line term="Flags">
          <PageLink href={paths.flags(squad.id)}>{flagsText(flags)}</PageLink>
        </Line>
        <Line term="Programme">
          <PageLink href={withChoices(paths.themes(squad.id), { term: termId })}>
            {programmeText(reviewed.coverage)}
          </PageLink>
        </Line>
        {reviewed.covered.length > 0 ? <Line term="Covered">{coveredText(reviewed.covered)}</Line> : null}
        {reviewed.luck ? (
          <Line term={words.luck}>
            {reviewed.luck === 'open' ? (
              <PageLink href={withChoices(paths.luck(squad.id), { term: termId })}>
                Would a fair draw give gaps like these?
              </PageLink>
            ) : (
              `The squad’s coach reads it first. You can read it from ${formatDay(reviewed.luck.from)} on.`
            )}
          </Line>
        ) : null}
        <Line term="Review">
          <AnswerPart
            squadId={squad.id}
            termId={termId}
            review={review}
            canAnswer={canAnswer}
            send={rest.answer}
          />
        </Line>
      </dl>
      <div className="no-print mt-4 max-w-3xl">
        <Details summary="Indices, and what they mean">
          <IndicesPart
            squadName={squad.name}
            figures={figures}
            before={before}
            termBeforeName={termBeforeName}
          />
        </Details>
        {rest.coaches.length > 0 ? (
          <Details summary="Hand this squad over">
            <HandOverForm squad={squad} coaches={rest.coaches} today={today} send={rest.handOver} />
          </Details>
        ) : null}
      </div>
    </section>
  )
}

function Line({ term, children }: { readonly term: string; readonly children: ReactNode }) {
  return (
    <div className="border-b border-rule py-2.5 sm:grid sm:grid-cols-[6rem_1fr] sm:gap-x-4">
      <dt className="text-soft">{term}</dt>
      <dd>{children}</dd>
    </div>
  )
}

function coachesText({ coaches }: ReviewedSquad): string {
  if (coaches.length === 0) return 'Nobody coaches this squad today.'
  return `Coached by ${listed(coaches.map(({ personName, kind }) => (kind === 'cover' ? `${personName} (cover)` : personName)))}`
}

/** "3 open, 2 answered, 1 cleared". */
export function flagsText({ open, answered, cleared }: FlagCounts): string {
  if (open + answered + cleared === 0) return 'none'
  return `${open} open, ${answered} answered, ${cleared} cleared`
}

export function programmeText({ onCourse, neverMet }: ReviewedSquad['coverage']): string {
  if (onCourse.of === 0) return 'nothing was due'
  const course = `${onCourse.themes} of ${onCourse.of} planned themes on course`
  return neverMet.length > 0 ? `${course}; never met: ${listed(neverMet)}` : course
}

function coveredText(covered: ReviewedSquad['covered']): string {
  const parts = covered.map(({ personName, sessions }) => `${words.sessions(sessions)} by ${personName}`)
  return `${listed(parts)}, in the coach’s place.`
}
