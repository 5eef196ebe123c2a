import type { SessionAccount } from '#fairness/account'
import type { Period, Spell } from '#match/match'
import type { RegisterLine } from '#squad/register'
import type { Written } from '#squad/written'
import type { SendForm } from '#ui/entry/send-form'
import { totalsOfAccount } from '#ui/entry/session-totals'
import { TotalsTable } from '#ui/entry/totals-table'
import { LinkButton } from '#ui/page/button'
import { Empty } from '#ui/page/empty'
import { SectionTitle } from '#ui/page/section-title'
import { WholePageLinkButton } from '#ui/page/whole-page-link-button'
import { paths } from '#ui/paths'
import { counted } from '#ui/plural'
import { CancelButton } from '#ui/sessions/cancel-button'
import type { Corrected, EventOfHistory } from '#ui/sessions/history'
import { History } from '#ui/sessions/history'
import { MatchRead } from '#ui/sessions/match-read'
import { PracticeRead } from '#ui/sessions/practice-read'
import { RegisterRead } from '#ui/sessions/register-read'
import { words } from '#ui/words'

type Named = { readonly id: string; readonly name: string }

export type SessionBodyProps = {
  readonly squadId: string
  readonly session: {
    readonly id: string
    readonly kind: 'practice' | 'match'
    readonly written: Written
    readonly isCancelled: boolean
    readonly periods: readonly Period[] | null
  }
  readonly isToCome: boolean
  readonly isPlanned: boolean
  readonly mayWrite: boolean
  readonly players: readonly Named[]
  readonly themes: readonly Named[]
  readonly register: readonly RegisterLine[]
  readonly spells: readonly Spell[]
  readonly account: SessionAccount | null
  readonly history: {
    readonly events: readonly EventOfHistory[]
    readonly correctedLines: readonly Corrected<RegisterLine>[]
    readonly correctedSpells: readonly Corrected<Spell>[]
  }
  /** Taps of the pitch that are not in the book yet. */
  readonly tapsWaiting: number
  readonly timeZone: string
  readonly cancel: SendForm
}

const legend = {
  practice:
    'A attacked, D defended, K kept goal, the number is the area; an empty cell waited, – was not there.',
  match: 'K keeper, B back, M middle, F forward; an empty cell was off.',
}

/** Everything that is written of one session, and what it came to. */
export function SessionBody(props: SessionBodyProps) {
  const { squadId, session, players, register, spells, account, history } = props
  const names = new Map(players.map(({ id, name }) => [id, name]))
  const isWritten = session.written !== 'notWritten'
  const inRegister = players.filter(({ id }) => register.some((line) => line.playerId === id))
  return (
    <>
      {props.mayWrite && !session.isCancelled ? (
        <p className="flex flex-wrap gap-3">
          {props.isToCome ? null : (
            <LinkButton
              href={paths.whistle(squadId, { sessionId: session.id })}
              weight={props.tapsWaiting > 0 ? 'main' : 'plain'}
            >
              {props.tapsWaiting > 0
                ? `After the whistle: ${counted(props.tapsWaiting, 'tap')} to write`
                : 'After the whistle'}
            </LinkButton>
          )}
          {props.isToCome ? null : (
            <LinkButton
              href={paths.writeSession(squadId, { sessionId: session.id })}
              weight={props.tapsWaiting > 0 ? 'plain' : 'main'}
            >
              {isWritten ? 'Correct it' : 'Write it down'}
            </LinkButton>
          )}
          <WholePageLinkButton
            href={paths.pitch(session.id)}
            weight={props.isToCome && (session.kind === 'practice' || props.isPlanned) ? 'main' : 'plain'}
          >
            To the pitch
          </WholePageLinkButton>
          {session.kind === 'practice' && !isWritten ? (
            <LinkButton href={paths.plan(squadId, { sessionId: session.id })}>
              {props.isPlanned ? words.plan.look : words.plan.make}
            </LinkButton>
          ) : null}
          {session.kind === 'match' && !isWritten ? (
            <LinkButton
              href={paths.lineUp(squadId, { sessionId: session.id })}
              weight={props.isToCome && !props.isPlanned ? 'main' : 'plain'}
            >
              {props.isPlanned ? words.lineUp.look : words.lineUp.make}
            </LinkButton>
          ) : null}
          {!isWritten ? (
            <LinkButton href={paths.helpers(squadId, { sessionId: session.id })}>
              Let a helper join
            </LinkButton>
          ) : null}
          <CancelButton squadId={squadId} sessionId={session.id} send={props.cancel} />
        </p>
      ) : null}
      {isWritten && account ? (
        <section>
          <SectionTitle>What it came to</SectionTitle>
          <TotalsTable
            totals={totalsOfAccount(
              account,
              inRegister.map(({ id }) => id),
            )}
            names={names}
            kind={session.kind}
          />
        </section>
      ) : null}
      <section>
        <SectionTitle note={isWritten ? legend[session.kind] : undefined}>
          {session.kind === 'practice' ? 'Turns' : 'Places'}
        </SectionTitle>
        {isWritten ? null : (
          <Empty>
            {props.isToCome
              ? 'Not held yet.'
              : 'Nobody has written this down yet. Until then it counts as not written, never as zero.'}
          </Empty>
        )}
        {isWritten && session.kind === 'practice' ? (
          <PracticeRead
            squadId={squadId}
            sessionId={session.id}
            events={history.events}
            register={register}
            players={inRegister}
            themes={props.themes}
            mayWrite={props.mayWrite && !session.isCancelled}
          />
        ) : null}
        {isWritten && session.kind === 'match' ? (
          <MatchRead periods={session.periods ?? []} spells={spells} players={inRegister} />
        ) : null}
      </section>
      {register.length > 0 ? (
        <section>
          <SectionTitle>Who was there</SectionTitle>
          <RegisterRead register={register} players={inRegister} />
        </section>
      ) : null}
      <History {...history} names={names} timeZone={props.timeZone} />
    </>
  )
}
