import type { MatchPlan } from '#lineup/match-plan'
import type { SendForm } from '#ui/entry/send-form'
import { LinkButton } from '#ui/page/button'
import { Empty } from '#ui/page/empty'
import { Notice } from '#ui/page/notice'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { AsPlannedForm } from '#ui/whistle/as-planned-form'
import { StandsInBook, WriteTapped, type WriteTappedProps } from '#ui/whistle/write-tapped'

export type MatchWhistleStepProps = Omit<WriteTappedProps, 'label' | 'length' | 'kind'> & {
  /** Why nothing can be written; null: it can. */
  readonly closed: string | null
  readonly isWritten: boolean
  readonly plan: MatchPlan | null
  readonly hasPlayed: boolean
  readonly asPlanned: SendForm
}

/** What is to be done next: write it, write it again, answer one question, or nothing more. */
export function MatchWhistleStep(props: MatchWhistleStepProps) {
  const { squadId, sessionId, closed, lastWrite, typed, plan } = props
  const byHand = <LinkButton href={paths.writeSession(squadId, { sessionId })}>By hand</LinkButton>
  if (closed) return <Notice>{closed}</Notice>
  if (props.hasPlayed && props.isWritten && (lastWrite === null || props.tapsSince === 0))
    return <StandsInBook {...props} kind="match" />
  if (props.hasPlayed) return <WriteTapped {...props} length={null} kind="match" />
  if (typed)
    return (
      <section className="space-y-3">
        <Notice>No kick-off was tapped in this match. It was typed in, and that stands in the book.</Notice>
        <p>{byHand}</p>
      </section>
    )
  if (!plan)
    return (
      <Empty next={byHand}>
        No kick-off was tapped in this match, and nothing was planned: type in what was played.
      </Empty>
    )
  return (
    <section>
      <SectionTitle note="No kick-off was tapped in this match. One question is left:">
        Was it all as planned?
      </SectionTitle>
      <AsPlannedForm
        squadId={squadId}
        sessionId={sessionId}
        version={props.version}
        rounds={[]}
        players={[]}
        send={props.asPlanned}
      />
      <p className="mt-4 flex flex-wrap items-center gap-3">It was otherwise: {byHand}</p>
    </section>
  )
}
