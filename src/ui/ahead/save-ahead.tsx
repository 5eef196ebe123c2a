'use client'

import { useActionState, useState } from 'react'
import type { PlannedPractice } from '#ahead/term-plan'
import type { AheadTerm } from '#ui/ahead/ahead-types'
import { isSamePlanned } from '#ui/ahead/is-same-planned'
import type { AheadEditing } from '#ui/ahead/use-ahead-draft'
import type { SendForm } from '#ui/entry/send-form'
import { Button, LinkButton } from '#ui/page/button'
import { CheckBox } from '#ui/page/check-box'
import { Notice } from '#ui/page/notice'
import { Problems } from '#ui/page/problems'
import { paths, withChoices } from '#ui/paths'

type SaveAheadProps = {
  readonly squadId: string
  readonly term: AheadTerm
  /** Null: there is no plan. */
  readonly practices: readonly PlannedPractice[] | null
  readonly editing: AheadEditing
  readonly save: SendForm
}

/** Keeps the plan of the term, and puts what is firm onto its practices if the coach says so. */
export function SaveAhead({ squadId, term, practices, editing, save }: SaveAheadProps) {
  const [reply, sendForm, isSaving] = useActionState(save, { status: 'idle' } as const)
  const [isTold, setTold] = useState(true)
  const { stored, asOf, version } = term
  const isSaved =
    practices !== null &&
    stored !== null &&
    stored.asOf === asOf &&
    isSamePlanned(practices, stored.practices)
  const plan = practices && { practices, asOf }
  return (
    <form
      action={sendForm}
      onSubmit={editing.settle}
      className="space-y-3 border-t-2 border-rule-strong pt-4"
    >
      <div aria-live="polite">
        {reply.status === 'refused' && !isSaved ? (
          <Problems title="Nothing was saved; the plan is still here" problems={reply.problems} />
        ) : null}
        {reply.status === 'done' && isSaved ? <Notice tone="done">{reply.message}</Notice> : null}
      </div>
      {plan ? (
        <input
          type="hidden"
          name="json"
          value={JSON.stringify({ squadId, termId: term.id, knownVersion: version, isTold, plan })}
        />
      ) : null}
      <CheckBox
        label="Put theme and design onto the next four practices"
        hint="Everyone who sees these practices sees them: other coaches, calendars, and families that are told what comes next."
        isTicked={isTold}
        onChange={setTold}
      />
      <div className="flex flex-wrap items-center gap-3">
        <Button disabled={!plan || isSaving || (isSaved && !isTold)}>
          {isSaving ? 'Saving …' : isSaved ? 'Save again' : 'Save this plan'}
        </Button>
        <Button type="button" weight="plain" disabled={!editing.canUndo} onClick={editing.undo}>
          Undo
        </Button>
        {isSaved ? (
          <LinkButton href={withChoices(paths.aheadSheet(squadId), { term: term.id })}>
            Print on A4
          </LinkButton>
        ) : (
          <span className="text-sm text-soft">To print: save it first.</span>
        )}
      </div>
    </form>
  )
}
