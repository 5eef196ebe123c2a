import { type Adaptation, adaptationKinds } from '#practice/adaptation'
import { adaptationEffects } from '#practice/design-effects'
import type { DesignSheet } from '#practice/design-sheet'
import { adaptationKindWords, forWhomWords } from '#ui/designs/design-words'
import { effectLines } from '#ui/designs/effect-text'
import { Empty } from '#ui/page/empty'
import { SectionTitle } from '#ui/page/section-title'

type AdaptationListProps = { readonly sheet: DesignSheet; readonly turnout: number }

/** How it is made harder or easier: by space, task, equipment and people, each with what it changes. */
export function AdaptationList({ sheet, turnout }: AdaptationListProps) {
  const kinds = adaptationKinds
    .map((kind) => ({ kind, own: sheet.adaptations.filter((adaptation) => adaptation.kind === kind) }))
    .filter(({ own }) => own.length > 0)
  return (
    <section>
      <SectionTitle
        note={`What each does is reckoned for ${turnout} children who share the turns evenly. Changing one thing at a time shows what it was that helped.`}
      >
        Harder or easier
      </SectionTitle>
      {kinds.length === 0 ? <Empty>No adaptation is written down yet.</Empty> : null}
      <div className="grid gap-x-12 gap-y-6 lg:grid-cols-2">
        {kinds.map(({ kind, own }) => (
          <div key={kind}>
            <h3 className="border-b-2 border-rule-strong pb-1 text-sm font-semibold text-soft">
              {adaptationKindWords[kind]}
            </h3>
            <ul>
              {own.map((adaptation) => (
                <AdaptationLine key={adaptation.id} adaptation={adaptation} sheet={sheet} turnout={turnout} />
              ))}
            </ul>
          </div>
        ))}
      </div>
    </section>
  )
}

type AdaptationLineProps = {
  readonly adaptation: Adaptation
  readonly sheet: DesignSheet
  readonly turnout: number
}

function AdaptationLine({ adaptation, sheet, turnout }: AdaptationLineProps) {
  const lines = effectLines(adaptationEffects(sheet, { adaptation, children: turnout }))
  const rising = sheet.rounds.filter(({ isFreeGame }) => !isFreeGame).map(({ title }) => title)
  const isEvery = (rounds: readonly string[]) =>
    rising.length > 1 && rising.every((title) => rounds.includes(title))
  return (
    <li className="border-b border-rule py-3">
      <p className="font-semibold">{adaptation.title}</p>
      <p>
        <span className="text-accent">
          {adaptation.makes === 'harder' ? 'Harder' : 'Easier'} for {forWhomWords[adaptation.forWhom]}.
        </span>{' '}
        {adaptation.why}
      </p>
      {lines.map(({ rounds, pieces }) => (
        <p key={rounds.join()} className="text-sm text-soft">
          {isEvery(rounds) ? 'Every round' : rounds.join(', ')}: {pieces.join('; ')}.
        </p>
      ))}
    </li>
  )
}
