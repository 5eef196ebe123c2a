'use client'

import { useState } from 'react'
import { type Adaptation, type AdaptationFor, adaptationKinds } from '#practice/adaptation'
import { adaptationEffects } from '#practice/design-effects'
import { freeId, plainAdaptation } from '#practice/new-design'
import { adaptationKindWords, forWhomWords } from '#ui/designs/design-words'
import { effectLines } from '#ui/designs/effect-text'
import { ChangesEditor } from '#ui/designs/form/changes-editor'
import { FieldProblem } from '#ui/designs/form/number-field'
import type { EditPartProps } from '#ui/designs/form/rounds-part'
import { TextField } from '#ui/designs/form/text-field'
import { Toggle } from '#ui/entry/toggle'
import { Button } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { SectionTitle } from '#ui/page/section-title'

type AdaptationsPartProps = EditPartProps & { readonly turnout: number }

/** How it is made harder or easier. */
export function AdaptationsPart({ design, turnout, problemOf, hasProblem, onChange }: AdaptationsPartProps) {
  // A new one is open, and does not close while its title is typed.
  const [known] = useState(() => new Set(design.adaptations.map(({ id }) => id)))
  const setAll = (change: (held: readonly Adaptation[]) => readonly Adaptation[]) =>
    onChange((held) => ({ ...held, adaptations: change(held.adaptations) }))
  return (
    <section>
      <SectionTitle note="Each says what is changed, whom it makes it harder or easier for, and why.">
        Harder or easier
      </SectionTitle>
      {design.adaptations.map((adaptation, index) => (
        <Details
          key={adaptation.id}
          isOpen={!known.has(adaptation.id)}
          summary={
            <>
              {adaptation.title || 'No title yet'}{' '}
              <span className="font-normal text-soft">
                {adaptationKindWords[adaptation.kind].toLowerCase()}
              </span>
              {hasProblem(`adaptations.${index}`) ? (
                <strong className="font-semibold text-warn"> something to put right</strong>
              ) : null}
            </>
          }
        >
          <AdaptationEditor
            adaptation={adaptation}
            rounds={design.rounds.map(({ title }) => title)}
            problemOf={(path) => problemOf(`adaptations.${index}${path ? `.${path}` : ''}`)}
            onChange={(change) => setAll((held) => held.with(index, { ...adaptation, ...change }))}
            onRemove={() => setAll((held) => held.toSpliced(index, 1))}
          />
          <div className="mt-3 text-sm text-soft" aria-live="polite">
            {effectLines(adaptationEffects(design, { adaptation, children: turnout })).map(
              ({ rounds, pieces }) => (
                <p key={rounds.join()}>
                  {rounds.join(', ')}: {pieces.join('; ')}.
                </p>
              ),
            )}
          </div>
        </Details>
      ))}
      <p className="mt-3">
        <Button
          type="button"
          weight="plain"
          onClick={() =>
            setAll((held) => [
              ...held,
              plainAdaptation(
                freeId(
                  'a',
                  held.map(({ id }) => id),
                ),
              ),
            ])
          }
        >
          Add an adaptation
        </Button>
      </p>
    </section>
  )
}

type AdaptationEditorProps = {
  readonly adaptation: Adaptation
  readonly rounds: readonly string[]
  readonly problemOf: (path: string) => string | null
  readonly onChange: (change: Partial<Adaptation>) => void
  readonly onRemove: () => void
}

const whom: readonly AdaptationFor[] = ['attack', 'defend', 'keep', 'all']

function AdaptationEditor({ adaptation, rounds, problemOf, onChange, onRemove }: AdaptationEditorProps) {
  return (
    <div className="space-y-4">
      <TextField
        label="What is done"
        value={adaptation.title}
        most={120}
        problem={problemOf('title')}
        onChange={(title) => onChange({ title })}
      />
      <Toggle
        label="It is about"
        options={adaptationKinds.map((value) => ({ value, label: adaptationKindWords[value].toLowerCase() }))}
        value={adaptation.kind}
        onChange={(kind) => onChange({ kind })}
      />
      <div className="flex flex-wrap gap-x-6 gap-y-3">
        <Toggle
          label="It makes it"
          options={[
            { value: 'harder', label: 'harder' },
            { value: 'easier', label: 'easier' },
          ]}
          value={adaptation.makes}
          onChange={(makes) => onChange({ makes })}
        />
        <Toggle
          label="for"
          options={whom.map((value) => ({ value, label: forWhomWords[value] }))}
          value={adaptation.forWhom}
          onChange={(forWhom) => onChange({ forWhom })}
        />
      </div>
      <TextField
        label="Why"
        value={adaptation.why}
        most={300}
        lines={2}
        problem={problemOf('why')}
        onChange={(why) => onChange({ why })}
      />
      <ChangesEditor
        changes={adaptation.changes}
        rounds={rounds}
        problemOf={problemOf}
        onChange={(changes) => onChange({ changes })}
      />
      <FieldProblem text={problemOf('changes')} />
      <Button type="button" weight="plain" onClick={onRemove}>
        Take the adaptation out
      </Button>
    </div>
  )
}
