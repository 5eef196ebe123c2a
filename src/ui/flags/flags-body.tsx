import type { Day } from '#common/time'
import type { JudgedFigure } from '#fairness/book/judged-figure'
import type { ToldFlag } from '#fairness/book/told-flag'
import type { FlagCause } from '#fairness/flags/flag-causes'
import type { CureGroup } from '#fairness/flags/flag-rule'
import type { Squad } from '#squad/squad'
import { CauseLine } from '#ui/book/cause-line'
import { capital } from '#ui/capital'
import type { SendForm } from '#ui/entry/send-form'
import { wholeMinutes } from '#ui/figures/minutes'
import { AnswerForm } from '#ui/flags/answer-form'
import { FlagLine } from '#ui/flags/flag-line'
import { type FlagFilter, FlagSwitches } from '#ui/flags/flag-switches'
import { flagGroupWords } from '#ui/flags/flag-words'
import { formatDay } from '#ui/format-day'
import { LinkButton } from '#ui/page/button'
import { Empty } from '#ui/page/empty'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { words } from '#ui/words'

type FlagEntry = {
  readonly id: string
  readonly playerId: string
  readonly playerName: string
  readonly status: FlagFilter['status']
  readonly told: ToldFlag
  readonly figure: JudgedFigure | null
  readonly answer: { readonly by: string; readonly on: Day; readonly reason: string } | null
  readonly clearedOn: Day | null
}

type FlagsBodyProps = {
  readonly squad: Squad
  readonly filter: FlagFilter
  readonly seesLuck: boolean
  readonly counts: Readonly<Record<FlagFilter['status'], number>>
  readonly causes: readonly { readonly cause: FlagCause; readonly count: number }[]
  readonly parts: readonly { readonly group: CureGroup | null; readonly flags: readonly FlagEntry[] }[]
  readonly answer: SendForm
}

export function FlagsBody({ squad, filter, seesLuck, counts, causes, parts, answer }: FlagsBodyProps) {
  const isEmpty = parts.every(({ flags }) => flags.length === 0)
  return (
    <>
      <FlagSwitches path={paths.flags(squad.id)} filter={filter} counts={counts} causes={causes} />
      {isEmpty ? <Empty>{nothing(filter)}</Empty> : null}
      {parts
        .filter(({ flags }) => flags.length > 0)
        .map(({ group, flags }) => (
          <section key={group ?? 'all'}>
            {group ? (
              <SectionTitle>{capital(flagGroupWords[group])}</SectionTitle>
            ) : (
              <h2 className="sr-only">By player</h2>
            )}
            <ul>
              {flags.map((flag) => (
                <FlagLine
                  key={flag.id}
                  flag={flag.told}
                  who={
                    <PageLink href={paths.player(squad.id, { playerId: flag.playerId })}>
                      {flag.playerName}
                    </PageLink>
                  }
                  answer={<FlagAnswer flag={flag} answer={answer} />}
                />
              ))}
            </ul>
          </section>
        ))}
      {seesLuck ? (
        <p className="no-print">
          <LinkButton href={paths.luck(squad.id)}>{words.luck}: would a fair draw give such gaps?</LinkButton>
        </p>
      ) : null}
    </>
  )
}

function FlagAnswer({ flag, answer }: { readonly flag: FlagEntry; readonly answer: SendForm }) {
  const said = flag.answer
  return (
    <div className="space-y-2">
      {flag.figure ? (
        <CauseLine figure={flag.figure} differenceMinutes={wholeMinutes(flag.figure.gapSeconds)} />
      ) : null}
      {said ? (
        <p className="max-w-prose text-sm">
          {flag.status === 'open' ? 'It has got worse since ' : 'Answered by '}
          {said.by}
          {flag.status === 'open' ? ' answered' : ''} on {formatDay(said.on)}: {said.reason}
        </p>
      ) : null}
      {flag.clearedOn ? <p className="text-sm">Cleared on {formatDay(flag.clearedOn)}.</p> : null}
      {flag.status === 'open' ? <AnswerForm flagId={flag.id} send={answer} /> : null}
      {flag.status === 'acknowledged' ? (
        <details className="no-print">
          <summary className="tap inline-flex items-center text-sm text-accent underline underline-offset-4">
            Answer otherwise
          </summary>
          <AnswerForm flagId={flag.id} send={answer} />
        </details>
      ) : null}
    </div>
  )
}

function nothing({ status, cause }: FlagFilter): string {
  const of = cause ? ' of this kind' : ''
  if (status === 'open') return `No flag${of} is open: nobody is asking for anything.`
  return status === 'acknowledged'
    ? `No flag${of} has been answered.`
    : `No flag${of} has cleared this season.`
}
