import type { LengthAsked } from '#pitch/length-of-practice'
import type { PracticePlan } from '#planning/practice-plan'
import type { SendForm } from '#ui/entry/send-form'
import { formatTime } from '#ui/format-time'
import { LinkButton } from '#ui/page/button'
import { Empty } from '#ui/page/empty'
import { Notice } from '#ui/page/notice'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { counted } from '#ui/plural'
import { AsPlannedForm } from '#ui/whistle/as-planned-form'
import { ConfirmForm } from '#ui/whistle/confirm-form'
import { roundNames } from '#ui/whistle/round-names'

export type WhistleStepProps = {
  readonly squadId: string
  readonly sessionId: string
  readonly timeZone: string
  /** Why nothing can be written; null: it can. */
  readonly closed: string | null
  readonly version: string
  readonly cursor: number
  readonly tapCount: number
  readonly lastWrite: { readonly at: Date; readonly byName: string | null } | null
  /** Taps that arrived after it was written. */
  readonly tapsSince: number
  readonly isWritten: boolean
  readonly typed: { readonly at: Date; readonly byName: string | null } | null
  readonly takenBack: readonly string[]
  readonly plan: PracticePlan | null
  /** Of those planned for, whom the register that was taken beforehand has not. */
  readonly absent: readonly string[]
  /** What has to be answered about how long it was; null: nothing. */
  readonly length: LengthAsked | null
  readonly hasTurns: boolean
  readonly hasRegister: boolean
  readonly nameOf: (playerId: string) => string
  readonly confirm: SendForm
  readonly asPlanned: SendForm
}

/** What is to be done next: write it, write it again, answer one question, or nothing more. */
export function WhistleStep(props: WhistleStepProps) {
  const { squadId, sessionId, timeZone, lastWrite, closed, hasTurns, hasRegister } = props
  const byHand = <LinkButton href={paths.writeSession(squadId, { sessionId })}>By hand</LinkButton>
  if (closed) return <Notice>{closed}</Notice>
  if (!hasTurns) return <NothingTapped {...props} byHand={byHand} />
  if (props.isWritten && (lastWrite === null || props.tapsSince === 0)) {
    return (
      <section className="space-y-3">
        <Notice tone="done">
          {lastWrite
            ? `This stands in the book: written at ${formatTime(lastWrite.at, timeZone)}${lastWrite.byName ? ` by ${lastWrite.byName}` : ''}.`
            : 'This stands in the book.'}
        </Notice>
        <p className="flex flex-wrap gap-3">
          <LinkButton href={paths.writeSession(squadId, { sessionId })}>Correct it by hand</LinkButton>
          <LinkButton href={paths.session(squadId, { sessionId })}>The practice in the book</LinkButton>
        </p>
      </section>
    )
  }
  return (
    <section className="space-y-3">
      {lastWrite ? (
        <Notice>
          {props.tapsSince > 0
            ? `${counted(props.tapsSince, 'tap')} arrived after this was written at ${formatTime(lastWrite.at, timeZone)}: look at what stands below now, and write it again.`
            : `The book says otherwise than what was tapped: somebody corrected it after ${formatTime(lastWrite.at, timeZone)}.`}
        </Notice>
      ) : (
        <p className="max-w-prose">
          Look at what was tapped. Nothing counts before it is written into the book; what is wrong can be
          corrected afterwards, turn by turn.
        </p>
      )}
      <Confirm {...props} label={lastWrite ? 'Write it again' : 'Write into the book'} />
      {hasRegister ? null : <Notice>Nobody was tapped as here.</Notice>}
    </section>
  )
}

function Confirm({ label, ...props }: WhistleStepProps & { readonly label: string }) {
  const { squadId, sessionId, version, cursor, typed, takenBack, nameOf } = props
  return (
    <ConfirmForm
      squadId={squadId}
      sessionId={sessionId}
      version={version}
      cursor={cursor}
      typed={typed && { byName: typed.byName, time: formatTime(typed.at, props.timeZone) }}
      takenBack={takenBack.map((id) => ({ id, name: nameOf(id) }))}
      length={props.length}
      label={label}
      send={props.confirm}
    />
  )
}

function NothingTapped(props: WhistleStepProps & { readonly byHand: React.ReactNode }) {
  const { squadId, sessionId, plan, typed, nameOf } = props
  // Of a practice of unknown length no register can be shown yet, though one was tapped.
  const hasRegister = props.hasRegister || props.length !== null
  if (typed) {
    return (
      <section className="space-y-3">
        <Notice>
          No turn was tapped at this practice. {typed.byName ?? 'Somebody'} typed it in at{' '}
          {formatTime(typed.at, props.timeZone)}, and that stands in the book.
        </Notice>
        <p className="flex flex-wrap gap-3">
          {props.byHand}
          <LinkButton href={paths.session(squadId, { sessionId })}>The practice in the book</LinkButton>
        </p>
      </section>
    )
  }
  if (!plan || plan.turns.length === 0) {
    return (
      <>
        <Empty next={props.byHand}>
          {hasRegister
            ? 'Only the register was tapped, and nothing was planned: type in what was played.'
            : 'Nothing was tapped at this practice, and nothing was planned: type in what was played.'}
        </Empty>
        {hasRegister ? <Confirm {...props} label="Write the register alone" /> : null}
      </>
    )
  }
  return (
    <section>
      <SectionTitle
        note={
          hasRegister
            ? 'Only the register was tapped. One question is left:'
            : 'Nothing was tapped at this practice. One question is left:'
        }
      >
        Was it as planned?
      </SectionTitle>
      <AsPlannedForm
        squadId={squadId}
        sessionId={sessionId}
        version={props.version}
        rounds={roundNames(plan)}
        players={plan.players.map(({ playerId }) => ({
          id: playerId,
          name: nameOf(playerId),
          isAbsent: props.absent.includes(playerId),
        }))}
        send={props.asPlanned}
      />
      <p className="mt-4 flex flex-wrap items-center gap-3">It was otherwise: {props.byHand}</p>
    </section>
  )
}
