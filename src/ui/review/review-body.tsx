import type { Day } from '#common/time'
import type { Term } from '#squad/squad'
import type { SendForm } from '#ui/entry/send-form'
import { Button, LinkButton } from '#ui/page/button'
import { Choice } from '#ui/page/choice'
import { Empty } from '#ui/page/empty'
import { ReplyForm } from '#ui/page/reply-form'
import { paths, withChoices } from '#ui/paths'
import { type ReviewedSquad, SquadPart } from '#ui/review/squad-part'

type ReviewBodyProps = {
  readonly today: Day
  readonly terms: readonly (Term & { readonly seasonName: string })[]
  readonly term: Term | null
  readonly termBeforeName: string | null
  readonly squads: readonly ReviewedSquad[]
  readonly canOpen: boolean
  readonly coaches: readonly { readonly id: string; readonly name: string }[]
  readonly open: SendForm
  readonly answer: SendForm
  readonly handOver: SendForm
}

export function ReviewBody(props: ReviewBodyProps) {
  const { terms, term, squads, canOpen } = props
  if (!term)
    return <Empty>No term has begun yet. Once one has, what is written of it is reviewed here.</Empty>
  return (
    <>
      <div className="no-print flex flex-wrap items-end gap-x-8 gap-y-3">
        <Choice
          label="Term"
          options={terms.map(({ id, name, seasonName }) => ({
            label: `${name} ${seasonName}`,
            href: withChoices(paths.review(), { term: id }),
            isChosen: id === term.id,
          }))}
        />
        {canOpen && squads.length > 0 ? (
          <LinkButton href={withChoices(paths.committee(), { term: term.id })}>
            Print for the committee
          </LinkButton>
        ) : null}
      </div>
      {canOpen && squads.some(({ review }) => review === null) ? (
        <ReplyForm
          send={props.open}
          refusedTitle="Not opened"
          waiting="Opening…"
          className="no-print max-w-prose"
        >
          <input type="hidden" name="termId" value={term.id} />
          <p className="mb-2">
            The squads’ coaches see this review once you open it, and can answer it for seven days before it
            is final.
          </p>
          <Button>Open the review of {term.name}</Button>
        </ReplyForm>
      ) : null}
      {squads.length === 0 ? (
        <Empty>
          {canOpen
            ? 'The club has no squad yet.'
            : 'The head coach has not opened the review of this term yet. Once it is open you see it here and can answer it.'}
        </Empty>
      ) : null}
      {squads.map((reviewed) => (
        <SquadPart key={reviewed.squad.id} {...props} reviewed={reviewed} termId={term.id} />
      ))}
    </>
  )
}
