import type { BelowPromise } from '#fairness/matches/below-promise'
import type { PlayedDay } from '#fairness/matches/long-days'
import type { MatchFormat } from '#match/format/match-format'
import { wholeMinutes } from '#ui/figures/minutes'
import { formatDay } from '#ui/format-day'
import type { NamedMatch } from '#ui/matches/match-grid'
import { belowText, longDayText, promiseSentence } from '#ui/matches/match-sentences'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'

type PromisePartProps = {
  readonly format: MatchFormat | null
  readonly policyShare: number
  readonly matches: readonly NamedMatch[]
  readonly below: readonly BelowPromise[]
  readonly longDays: readonly PlayedDay[]
  readonly nameOf: (playerId: string) => string
  readonly hrefOf: (sessionId: string) => string
}

/** What everyone is promised, and every time that somebody had less, with what the book knows of why. */
export function PromisePart(props: PromisePartProps) {
  const { format, policyShare, matches, below, nameOf, hrefOf } = props
  const missed = matches.filter(({ sessionId }) => below.some((one) => one.sessionId === sessionId))
  return (
    <section>
      <SectionTitle note={promiseSentence(format?.leastTime ?? null, policyShare)}>Least time</SectionTitle>
      {missed.length === 0 ? <p>Everybody had it in every match.</p> : null}
      <ul className="space-y-2">
        {missed.map(({ sessionId, day, title }) => (
          <li key={sessionId}>
            <PageLink href={hrefOf(sessionId)} className="tap inline-flex items-center lg:min-h-0">
              {formatDay(day)}
            </PageLink>
            {title ? ` ${title}` : ''}
            <ul className="ml-4 list-disc text-sm">
              {below
                .filter((one) => one.sessionId === sessionId)
                .map(({ figure, reason }) => (
                  <li key={figure.playerId}>
                    {nameOf(figure.playerId)}: {belowText({ ...figure, reason })}
                  </li>
                ))}
            </ul>
          </li>
        ))}
      </ul>
      <DaysLimit {...props} />
    </section>
  )
}

function DaysLimit({ format, longDays, nameOf }: PromisePartProps) {
  const most = format?.mostSecondsADay ?? null
  if (most === null) return null
  if (longDays.length === 0)
    return (
      <p className="mt-3">
        Nobody played longer on one day than the {wholeMinutes(most)} min that the format allows.
      </p>
    )
  return (
    <ul className="mt-3 space-y-1">
      {longDays.map((day) => (
        <li key={`${day.playerId} ${day.day}`}>
          {longDayText({ ...day, name: nameOf(day.playerId), mostSecondsADay: most })}
        </li>
      ))}
    </ul>
  )
}
