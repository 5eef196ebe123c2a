import type { SessionAccount } from '#fairness/account'
import type { AfterTheWhistle } from '#pitch/after-the-whistle'
import type { SetAside } from '#pitch/set-aside'
import type { PlannedTurn, PracticePlan } from '#planning/practice-plan'
import type { Turn } from '#practice/turn'
import type { RegisterLine } from '#squad/register'
import type { Written } from '#squad/written'
import type { SendForm } from '#ui/entry/send-form'
import { totalsOfAccount } from '#ui/entry/session-totals'
import { TotalsTable } from '#ui/entry/totals-table'
import { Details } from '#ui/page/details'
import { SectionTitle } from '#ui/page/section-title'
import { asideSentences } from '#ui/pitch/aside-words'
import { counted } from '#ui/plural'
import { RegisterRead } from '#ui/sessions/register-read'
import { TurnsTable } from '#ui/sessions/turns-table'
import { differenceSentence } from '#ui/whistle/difference-words'
import { GuestsPart } from '#ui/whistle/guests-part'
import { LookedBack } from '#ui/whistle/looked-back'
import { MovedPart } from '#ui/whistle/moved-part'
import { roundNames } from '#ui/whistle/round-names'
import { TapsAside } from '#ui/whistle/taps-aside'
import { WhistleStep, type WhistleStepProps } from '#ui/whistle/whistle-step'
import { words } from '#ui/words'

type Named = { readonly id: string; readonly name: string }

export type WhistleBodyProps = Omit<WhistleStepProps, 'nameOf' | 'hasTurns' | 'hasRegister'> & {
  readonly plan: PracticePlan | null
  /** The plan's turns after every new plan. */
  readonly turnsNow: readonly PlannedTurn[]
  readonly book: {
    readonly turns: readonly Turn[]
    readonly register: readonly RegisterLine[]
    readonly written: Written
  }
  readonly after: AfterTheWhistle
  readonly setAside: readonly SetAside[]
  readonly account: SessionAccount
  readonly moved: Parameters<typeof MovedPart>[0]['moved']
  readonly players: readonly Named[]
  readonly guests: Parameters<typeof GuestsPart>[0]['guests']
  readonly joinable: readonly Named[]
  readonly joinGuest: SendForm
}

/** A practice after the whistle: what was tapped, to be checked, one button, and what it does to the season. */
export function WhistleBody(props: WhistleBodyProps) {
  const { squadId, sessionId, plan, book, after, players, guests } = props
  const names = new Map(players.map(({ id, name }) => [id, name]))
  const nameOf = (id: string) => names.get(id) ?? 'Somebody'
  const rounds = roundNames(plan)
  const roundName = (round: number) => rounds[round] ?? `Round ${round + 1}`
  const hasTurns = book.turns.length > 0
  const there = players.filter(({ id }) => book.register.some(({ playerId }) => playerId === id))
  // Places may change twice within a minute: once is enough to say so.
  const differences = [
    ...new Set(after.differences.map((one) => differenceSentence(one, { nameOf, roundName }))),
  ]
  const asides = asideSentences(props.setAside.map(({ why }) => why))
  return (
    <>
      <WhistleStep {...props} nameOf={nameOf} hasTurns={hasTurns} hasRegister={there.length > 0} />
      {hasTurns ? (
        <>
          <section>
            <SectionTitle note={`${counted(props.tapCount, 'tap')}, ${words.written[book.written]}.`}>
              What was played
            </SectionTitle>
            <TurnsTable
              turns={book.turns.map((turn, index) => ({ eventId: `${index}`, turn }))}
              register={book.register}
              players={there}
              themes={[]}
              correctHref={null}
            />
            {differences.length > 0 ? (
              <>
                <h3 className="mt-4 font-semibold">Otherwise than planned</h3>
                <ul className="list-disc space-y-1 pl-5">
                  {differences.map((sentence) => (
                    <li key={sentence}>{sentence}</li>
                  ))}
                </ul>
              </>
            ) : null}
            <TapsAside sentences={asides} />
          </section>
          <section>
            <SectionTitle>Turns and minutes</SectionTitle>
            <TotalsTable
              totals={totalsOfAccount(
                props.account,
                there.map(({ id }) => id),
              )}
              names={names}
              kind="practice"
            />
            <div className="mt-4">
              <LookedBack
                after={after}
                nameOf={nameOf}
                roundName={roundName}
                roundOfTurn={(turn) => {
                  const round = props.turnsNow[Math.floor(turn)]?.round
                  return round === undefined ? null : (plan?.design.rounds[round] ?? null)
                }}
                bibs={plan?.design.sides?.names ?? null}
              />
            </div>
          </section>
          <section>
            <SectionTitle note="Difference from an even share over the season’s practices, in minutes: before this practice, and with it.">
              What it does to the season
            </SectionTitle>
            <Details summary="Player by player" isOpen={props.isWritten}>
              <MovedPart squadId={squadId} moved={props.moved} nameOf={nameOf} />
            </Details>
          </section>
        </>
      ) : null}
      {there.length > 0 ? (
        <section>
          <SectionTitle>Who was there</SectionTitle>
          <RegisterRead register={book.register} players={there} />
        </section>
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
