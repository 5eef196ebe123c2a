import type { SessionAccount } from '#fairness/account'
import type { MatchPlan } from '#lineup/match-plan'
import type { MatchFormat } from '#match/format/match-format'
import { sayGoals } from '#match/goals'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'
import type { MatchBook } from '#touchline/book-of-match'
import type { MatchSetAside } from '#touchline/match-set-aside'
import { capital } from '#ui/capital'
import type { SendForm } from '#ui/entry/send-form'
import { totalsOfAccount } from '#ui/entry/session-totals'
import { TotalsTable } from '#ui/entry/totals-table'
import { Details } from '#ui/page/details'
import { SectionTitle } from '#ui/page/section-title'
import { clockWords } from '#ui/pitch/clock-words'
import { counted } from '#ui/plural'
import { MatchRead } from '#ui/sessions/match-read'
import { RegisterRead } from '#ui/sessions/register-read'
import { matchAsideSentences } from '#ui/touchline/match-aside-words'
import { periodName } from '#ui/touchline/period-name'
import { GuestsPart } from '#ui/whistle/guests-part'
import { MatchWhistleStep, type MatchWhistleStepProps } from '#ui/whistle/match-whistle-step'
import { PlayedAgainstPlan } from '#ui/whistle/played-against-plan'
import { TapsAside } from '#ui/whistle/taps-aside'
import { words } from '#ui/words'

type Named = { readonly id: string; readonly name: string }

type MatchWhistleBodyProps = Omit<MatchWhistleStepProps, 'nameOf' | 'hasPlayed'> & {
  readonly plan: MatchPlan | null
  readonly format: MatchFormat
  readonly countsGoals: boolean
  readonly book: MatchBook & { readonly register: readonly RegisterLine[] }
  readonly setAside: readonly MatchSetAside[]
  readonly account: SessionAccount
  readonly players: readonly Named[]
  readonly guests: Parameters<typeof GuestsPart>[0]['guests']
  readonly joinable: readonly Named[]
  readonly joinGuest: SendForm
}

/** A match after the whistle: what was tapped, to be checked, and one button. */
export function MatchWhistleBody(props: MatchWhistleBodyProps) {
  const { squadId, sessionId, plan, format, book, players, guests } = props
  const names = new Map(players.map(({ id, name }) => [id, name]))
  const nameOf = (id: PlayerId) => names.get(id) ?? 'Somebody'
  const hasPlayed = book.spells.length > 0
  const there = players.filter(({ id }) => book.register.some(({ playerId }) => playerId === id))
  const asides = matchAsideSentences(props.setAside.map(({ why }) => why))
  return (
    <>
      <MatchWhistleStep {...props} nameOf={nameOf} hasPlayed={hasPlayed} />
      {hasPlayed ? (
        <>
          <section>
            <SectionTitle note={`${counted(props.tapCount, 'tap')}, ${words.written[book.written]}.`}>
              What was played
            </SectionTitle>
            <ul className="mb-4 tabular-nums">
              {book.periods.map(({ start, end }, period) => (
                <li key={start}>
                  {capital(periodName(period, format))}: {clockWords(end - start)}
                  {book.endsAssumed.includes(period)
                    ? '. Nobody tapped the whistle: taken to be as long as planned.'
                    : ''}
                </li>
              ))}
              {props.countsGoals && book.goals ? <li>Goals: {sayGoals(book.goals)}</li> : null}
            </ul>
            <TotalsTable
              totals={totalsOfAccount(
                props.account,
                there.map(({ id }) => id),
              )}
              names={names}
              kind="match"
            />
            <Details summary="Who played in which line, and when">
              <MatchRead periods={book.periods} spells={book.spells} players={there} />
            </Details>
            {plan ? <PlayedAgainstPlan plan={plan} spells={book.spells} players={there} /> : null}
            <TapsAside sentences={asides} />
          </section>
          <section>
            <SectionTitle>Who was there</SectionTitle>
            <RegisterRead register={book.register} players={there} />
          </section>
        </>
      ) : null}
      <GuestsPart
        squadId={squadId}
        sessionId={sessionId}
        guests={guests}
        joinable={props.joinable}
        nameOf={nameOf}
        send={props.joinGuest}
      />
    </>
  )
}
