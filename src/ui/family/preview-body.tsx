import type { Day } from '#common/time'
import type { FamilySentence } from '#family/family-sentences'
import type { FamilyChange } from '#family/page-changes'
import type { Waiting } from '#family/what-waits'
import type { SendForm } from '#ui/entry/send-form'
import { changesText, readersText, waitingText } from '#ui/family/coach-words'
import { ConfirmForm } from '#ui/family/confirm-form'
import { FamilyBody } from '#ui/family/family-body'
import type { FamilySquad } from '#ui/family/family-squad-part'
import { familySentenceText } from '#ui/family/family-words'
import { NoteForm } from '#ui/family/note-form'
import { AnswerForm } from '#ui/flags/answer-form'
import { formatDay } from '#ui/format-day'
import { LinkButton } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Notice } from '#ui/page/notice'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'

type Step = {
  readonly flagId: string
  readonly kind: 'practice' | 'match'
  readonly sentence: FamilySentence
  readonly answered: string | null
  readonly waitsUntil: Day | null
}

type PreviewBodyProps = {
  readonly squad: { readonly id: string }
  readonly playerId: string
  readonly mark: string
  readonly changes: readonly FamilyChange[]
  readonly waits: readonly Waiting[]
  readonly steps: readonly Step[]
  readonly readers: { readonly recorded: number; readonly claimed: number; readonly withheld: number }
  readonly seenOn: Day
  readonly next: FamilySquad
  readonly now: FamilySquad
  readonly isOnItsWay: boolean
  readonly askWhom: string
  readonly confirm: SendForm
  readonly writeNote: SendForm
  readonly answer: SendForm
}

/** One child's page before its family reads it: what is new, what waits, the note, then the page word for word. */
export function PreviewBody(props: PreviewBodyProps) {
  const { squad, playerId, mark, changes, waits, steps, readers, next } = props
  return (
    <>
      <section className="no-print space-y-2">
        <p>{changesText(changes)}</p>
        {waits.map((waiting) => (
          <p key={waiting.what} className="font-medium">
            {waitingText(waiting, { isOwnPage: true })}
          </p>
        ))}
        {props.isOnItsWay ? <p>A page is confirmed that the family sees from the next morning.</p> : null}
        <p className="text-soft">
          {readersText(readers)}
          {readers.withheld > 0 ? ' Time and place are kept from some.' : ''}
        </p>
        <ConfirmForm
          squadId={squad.id}
          seen={[{ playerId, mark }]}
          label={changes.length > 0 ? 'Confirm this page' : 'Confirm it again'}
          weight={changes.length > 0 ? 'main' : 'plain'}
          send={props.confirm}
        />
        <p className="max-w-prose text-soft">
          What you confirm now, the family reads from {formatDay(props.seenOn)}, 8:00.
        </p>
      </section>
      {steps.length > 0 ? <StepsPart steps={steps} answer={props.answer} /> : null}
      <section className="no-print">
        <NoteForm
          squadId={squad.id}
          playerId={playerId}
          note={next.shown?.page.note ?? ''}
          send={props.writeNote}
        />
      </section>
      <p className="no-print flex flex-wrap gap-2">
        <LinkButton href={paths.familyLinks(squad.id, { playerId })}>Links for guardians</LinkButton>
        <LinkButton href={paths.player(squad.id, { playerId })}>The player’s page</LinkButton>
      </p>
      <Notice>From here on, the page is as the family will see it.</Notice>
      <div className="space-y-6">
        <FamilyBody squads={[next]} askWhom={props.askWhom} />
      </div>
      <div className="no-print">
        <Details summary="What the family reads now">
          <div className="space-y-6 pt-4">
            <FamilyBody squads={[props.now]} askWhom={props.askWhom} />
          </div>
        </Details>
      </div>
    </>
  )
}

function StepsPart({ steps, answer }: { readonly steps: readonly Step[]; readonly answer: SendForm }) {
  return (
    <section className="no-print">
      <SectionTitle note="The family reads the answers of the list in plain words. Of your own words it reads only: “the coach will tell you”.">
        Your next step
      </SectionTitle>
      <ul>
        {steps.map(({ flagId, kind, sentence, answered, waitsUntil }) => (
          <li key={flagId} className="border-b border-rule py-3">
            <p className="max-w-prose">{familySentenceText(sentence, kind)}</p>
            {answered ? <p className="text-sm">You answered: {answered}</p> : null}
            {waitsUntil ? (
              <p className="font-medium">
                Say a next step. Without one, the family reads this sentence from {formatDay(waitsUntil)}.
              </p>
            ) : null}
            <AnswerForm flagId={flagId} send={answer} />
          </li>
        ))}
      </ul>
    </section>
  )
}
