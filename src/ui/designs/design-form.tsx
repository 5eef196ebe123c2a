'use client'

import { useActionState, useMemo, useState } from 'react'
import type { Problem } from '#common/problem'
import type { Cast } from '#practice/cast-faults'
import { castFaults } from '#practice/cast-faults'
import type { DesignSheet } from '#practice/design-sheet'
import type { Squad } from '#squad/squad'
import { AboutPart } from '#ui/designs/form/about-part'
import { AdaptationsPart } from '#ui/designs/form/adaptations-part'
import { draftOf, type FormDraft, isStillEmpty, placeOf, problemsOf } from '#ui/designs/form/draft'
import { RoundsPart } from '#ui/designs/form/rounds-part'
import { SidesPart } from '#ui/designs/form/sides-part'
import type { SendForm } from '#ui/entry/send-form'
import { useDraft } from '#ui/entry/use-draft'
import { Button } from '#ui/page/button'
import { CheckBox } from '#ui/page/check-box'
import { Notice } from '#ui/page/notice'
import { Problems } from '#ui/page/problems'

type DesignFormProps = {
  readonly squad: Squad
  readonly cast: Cast
  readonly themes: readonly { readonly id: string; readonly name: string; readonly depth: number }[]
  /** Null: a new one. */
  readonly edited: { readonly sheet: DesignSheet; readonly version: string } | null
  readonly send: SendForm
}

const asItIs = (draft: FormDraft) => draft

/** A design written or changed. What is wrong is said beside its field at once; the server judges by the same rules. */
export function DesignForm({ squad, cast, themes, edited, send }: DesignFormProps) {
  const first = useMemo(() => draftOf(edited?.sheet ?? null), [edited])
  const key = `design-${edited?.sheet.id ?? 'new'}`
  const { draft, edit, undo, canUndo, wasFound, drop } = useDraft<FormDraft>(
    { key, version: edited?.version ?? '', forKeeping: asItIs },
    first,
  )
  const [sent, setSent] = useState<FormDraft | null>(null)
  const hasTried = sent !== null
  const [reply, sendForm, isSaving] = useActionState(send, { status: 'idle' } as const)
  const problems = problemsOf(draft, cast)
  const told =
    reply.status === 'refused' ? reply.problems.map(asTheFormHasIt).filter(stillHolds(sent, draft)) : []
  const shown = [...problems, ...told].filter((problem) => hasTried || !isStillEmpty(problem))
  const problemOf = (path: string) => shown.find((problem) => problem.path === path)?.message ?? null
  const hasProblem = (path: string) => shown.some((problem) => problem.path.startsWith(`${path}.`))
  const onChange = (change: (design: FormDraft['design']) => FormDraft['design']) =>
    edit((held) => ({ ...held, design: change(held.design) }))
  const part = { design: draft.design, problemOf, hasProblem, onChange }
  const isBeyondSquad = draft.isForOthers || castFaults(draft.design.rounds, cast).length > 0
  const json = JSON.stringify({
    squadId: squad.id,
    ...(edited ? { designId: edited.sheet.id, version: edited.version } : {}),
    ...draft,
  })
  return (
    <form
      action={(form) => {
        setSent(draft)
        // A saved design leads on to its page; what was refused is still here.
        drop()
        sendForm(form)
      }}
      className="space-y-8"
    >
      <input type="hidden" name="json" value={json} />
      {wasFound ? <Notice>What you had typed here before is back.</Notice> : null}
      <AboutPart {...part} themes={themes} />
      <RoundsPart {...part} />
      {isBeyondSquad ? (
        <CheckBox
          label={`Meant for another squad than ${squad.name}`}
          hint="Then it may have more places, and more in goal, than this squad can fill."
          isTicked={draft.isForOthers}
          onChange={(isForOthers) => edit((held) => ({ ...held, isForOthers }))}
        />
      ) : null}
      <SidesPart {...part} />
      <AdaptationsPart {...part} turnout={cast.children} />
      <Problems
        title="Nothing was saved yet"
        problems={told}
        places={Object.fromEntries(told.map(({ path }) => [path, placeOf(path)]))}
      />
      <div className="sticky bottom-0 z-10 -mx-4 flex justify-end gap-2 border-t-2 border-rule-strong bg-leaf px-4 py-2 sm:-mx-8 sm:px-8">
        <Button type="button" weight="plain" disabled={!canUndo} onClick={undo}>
          Undo
        </Button>
        <Button disabled={isSaving}>{isSaving ? 'Saving…' : 'Save the design'}</Button>
      </div>
    </form>
  )
}

/** What the server said of a part that has not been touched since; of the rest the page's own rules speak. */
function stillHolds(sent: FormDraft | null, { design, isForOthers }: FormDraft) {
  return ({ path }: Problem) => {
    const part = path.split('.')[0] as keyof FormDraft['design']
    return sent?.isForOthers === isForOthers && sent.design[part] === design[part]
  }
}

/** The shape of what is sent puts the design into a field of its own. */
function asTheFormHasIt(problem: Problem): Problem {
  return { ...problem, path: problem.path.replace(/^design\./, '') }
}
