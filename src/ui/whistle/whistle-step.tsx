import type { PracticePlan } from '#planning/practice-plan'
import type { SendForm } from '#ui/entry/send-form'
import { formatTime } from '#ui/format-time'
import { LinkButton } from '#ui/page/button'
import { Empty } from '#ui/page/empty'
import { Notice } from '#ui/page/notice'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { AsPlannedForm } from '#ui/whistle/as-planned-form'
import { roundNames } from '#ui/whistle/round-names'
import { ConfirmTapped, StandsInBook, WriteTapped, type WriteTappedProps } from '#ui/whistle/write-tapped'

export type WhistleStepProps = Omit<WriteTappedProps, 'label' | 'kind'> & {
  /** Why nothing can be written; null: it can. */
  readonly closed: string | null
  readonly isWritten: boolean
  readonly plan: PracticePlan | null
  /** Of those planned for, whom the register that was taken beforehand has not. */
  readonly absent: readonly string[]
  readonly hasTurns: boolean
  readonly hasRegister: boolean
  readonly asPlanned: SendForm
}

/** What is to be done next: write it, write it again, answer one question, or nothing more. */
export function WhistleStep(props: WhistleStepProps) {
  const { squadId, sessionId, lastWrite, closed, hasTurns, hasRegister } = props
  const byHand = <LinkButton href={paths.writeSession(squadId, { sessionId })}>By hand</LinkButton>
  if (closed) return <Notice>{closed}</Notice>
  if (!hasTurns) return <NothingTapped {...props} byHand={byHand} />
  if (props.isWritten && (lastWrite === null || props.tapsSince === 0)) {
    return <StandsInBook {...props} kind="practice" />
  }
  return (
    <>
      <WriteTapped {...props} kind="practice" />
      {hasRegister ? null : <Notice>Nobody was tapped as here.</Notice>}
    </>
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
        {hasRegister ? <ConfirmTapped {...props} kind="practice" label="Write the register alone" /> : null}
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
