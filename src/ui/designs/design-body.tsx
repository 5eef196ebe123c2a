import type { Cast } from '#practice/cast-faults'
import type { Caution } from '#practice/design-cautions'
import { designSeconds } from '#practice/design-effects'
import type { DesignSheet } from '#practice/design-sheet'
import type { ChildrenNeeded } from '#practice/design-stretch'
import type { Squad } from '#squad/squad'
import { AdaptationList } from '#ui/designs/adaptation-list'
import { CautionList, CautionPart } from '#ui/designs/caution-list'
import { sizeText } from '#ui/designs/design-words'
import { RoundPart } from '#ui/designs/round-part'
import { StretchPart } from '#ui/designs/stretch-table'
import type { SendForm } from '#ui/entry/send-form'
import { wholeMinutes } from '#ui/figures/minutes'
import { Button, LinkButton } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'
import { paths, withChoices } from '#ui/paths'

type DesignBodyProps = {
  readonly squad: Squad
  readonly sheet: DesignSheet
  readonly cast: Cast
  readonly turnout: number
  readonly needed: ChildrenNeeded | null
  readonly spaceSentence: string | null
  readonly cautions: readonly Caution[]
  readonly mayChange: boolean
  readonly sends: Readonly<Record<'copy' | 'putAway', SendForm>>
}

/** A design as a coach reads it before a practice. */
export function DesignBody(props: DesignBodyProps) {
  const { squad, sheet, cast, turnout, needed, spaceSentence, cautions, mayChange } = props
  return (
    <>
      {mayChange ? <Deeds {...props} /> : null}
      <section>
        <SectionTitle>The ground</SectionTitle>
        <div className="max-w-prose space-y-1">
          <p>
            {sizeText(sheet, sheet.areaUnit)}
            {sheet.isMirrored
              ? ', in two halves that mirror each other, the goals back to back in the middle'
              : ''}
            .
          </p>
          <p>{lengthText(sheet.rounds)}</p>
          {spaceSentence ? <p>{spaceSentence}</p> : null}
          <CautionList cautions={cautions.filter(({ isWarning }) => isWarning)} />
          {sheet.sides ? <p>{sidesText(sheet.sides)}</p> : null}
          {sheet.note ? <p className="whitespace-pre-line">{sheet.note}</p> : null}
        </div>
      </section>
      <section>
        <SectionTitle note="Drawn to scale but for goals and letters. A attacks the way of the arrow, D defends, K keeps goal; a broken line is a line to reach.">
          Rounds
        </SectionTitle>
        <ol className="border-t border-rule">
          {sheet.rounds.map((round, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: rounds of a design have no other name
            <RoundPart key={index} sheet={sheet} round={round} number={index + 1} turnout={turnout} />
          ))}
        </ol>
      </section>
      <StretchPart squadId={squad.id} sheet={sheet} cast={cast} needed={needed} turnout={turnout} />
      <AdaptationList sheet={sheet} turnout={turnout} />
      <CautionPart cautions={cautions.filter(({ isWarning }) => !isWarning)} />
    </>
  )
}

/** Time from first ball to last of each round, and how much of it the ball is in play. */
function lengthText(rounds: DesignSheet['rounds']): string {
  const { whole, live } = designSeconds(rounds)
  return `The rounds take about ${wholeMinutes(whole)} min, the ball in play for ${wholeMinutes(live)} of them; breaks between rounds come on top.`
}

function sidesText({ names, swap }: NonNullable<DesignSheet['sides']>): string {
  const change =
    swap === 'eachRound' ? 'attack and defence change over after each round' : 'they keep their part'
  return `Two sides, ${names[0]} and ${names[1]}, for the whole practice: ${names[0]} attacks first, ${change}.`
}

function Deeds({ squad, sheet, sends }: DesignBodyProps) {
  const hidden = (
    <>
      <input type="hidden" name="squadId" value={squad.id} />
      <input type="hidden" name="designId" value={sheet.id} />
    </>
  )
  return (
    <div className="no-print flex flex-wrap gap-2">
      {sheet.isPutAway ? null : (
        <LinkButton href={withChoices(paths.newSession(squad.id), { design: sheet.id })} weight="main">
          New practice with it
        </LinkButton>
      )}
      <LinkButton href={paths.editDesign(squad.id, { designId: sheet.id })}>Edit</LinkButton>
      <ReplyForm send={sends.copy} refusedTitle="Not copied" waiting="Copying…">
        {hidden}
        <Button weight="plain">Make a copy</Button>
      </ReplyForm>
      <ReplyForm send={sends.putAway} refusedTitle="Nothing was changed" waiting="Saving…">
        {hidden}
        <Button weight="plain" name="what" value={sheet.isPutAway ? 'takeOut' : 'putAway'}>
          {sheet.isPutAway ? 'Take out again' : 'Put away'}
        </Button>
      </ReplyForm>
    </div>
  )
}
