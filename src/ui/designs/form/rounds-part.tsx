'use client'

import type { DesignRound } from '#practice/design'
import { copyRound, moveRound, removeRound } from '#practice/edit-rounds'
import { plainRound } from '#practice/new-design'
import { shapesText } from '#practice/shape-text'
import type { FormDraft } from '#ui/designs/form/draft'
import { FieldProblem } from '#ui/designs/form/number-field'
import { RoundEditor } from '#ui/designs/form/round-editor'
import { Button } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { SectionTitle } from '#ui/page/section-title'

export type EditPartProps = {
  readonly design: FormDraft['design']
  readonly problemOf: (path: string) => string | null
  /** Whether something under the path is wrong. */
  readonly hasProblem: (path: string) => boolean
  readonly onChange: (change: (design: FormDraft['design']) => FormDraft['design']) => void
}

/** The rounds in their order; each opens. */
export function RoundsPart({ design, problemOf, hasProblem, onChange }: EditPartProps) {
  const set = (index: number, change: Partial<DesignRound>) =>
    onChange((held) => ({
      ...held,
      rounds: held.rounds.map((round, at) => (at === index ? { ...round, ...change } : round)),
    }))
  return (
    <section>
      <SectionTitle note="They should rise: smaller and easier first, the free game last.">
        Rounds
      </SectionTitle>
      {design.rounds.map((round, index) => (
        <Details
          // biome-ignore lint/suspicious/noArrayIndexKey: rounds of a design have no other name
          key={index}
          isOpen={index === 0}
          summary={<RoundSummary round={round} number={index + 1} isWrong={hasProblem(`rounds.${index}`)} />}
        >
          <RoundEditor
            design={design}
            round={round}
            problemOf={(path) => problemOf(`rounds.${index}.${path}`)}
            onChange={(change) => set(index, change)}
          />
          <p className="mt-4 flex flex-wrap gap-2">
            <Button
              type="button"
              weight="plain"
              disabled={index === 0}
              onClick={() => onChange((held) => moveRound(held, { from: index, by: -1 }))}
            >
              ↑ Earlier
            </Button>
            <Button
              type="button"
              weight="plain"
              disabled={index === design.rounds.length - 1}
              onClick={() => onChange((held) => moveRound(held, { from: index, by: 1 }))}
            >
              ↓ Later
            </Button>
            <Button type="button" weight="plain" onClick={() => onChange((held) => copyRound(held, index))}>
              Once more
            </Button>
            <Button type="button" weight="plain" onClick={() => onChange((held) => removeRound(held, index))}>
              Take the round out
            </Button>
          </p>
        </Details>
      ))}
      <FieldProblem text={problemOf('rounds')} />
      <p className="mt-3">
        <Button
          type="button"
          weight="plain"
          onClick={() =>
            onChange((held) => ({ ...held, rounds: [...held.rounds, plainRound(held.rounds.length + 1)] }))
          }
        >
          Add a round
        </Button>
      </p>
    </section>
  )
}

function RoundSummary({
  round,
  number,
  isWrong,
}: {
  readonly round: DesignRound
  readonly number: number
  readonly isWrong: boolean
}) {
  return (
    <>
      {number}. {round.title || 'no title'}{' '}
      <span className="font-normal text-soft">{shapesText(round.stations)}</span>
      {isWrong ? <strong className="font-semibold text-warn"> something to put right</strong> : null}
    </>
  )
}
