'use client'

import { type ReactNode, useActionState } from 'react'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Notice } from '#ui/page/notice'
import { Problems } from '#ui/page/problems'

type SavePlanProps = {
  /** What is saved: "plan", "line-up". */
  readonly what: string
  /** What is sent; null: there is none to save. */
  readonly json: string | null
  readonly isSaved: boolean
  /** What is saved can be sent again, and whether there is a reason to. Missing: it is saved once. */
  readonly again?: boolean
  readonly save: SendForm
  readonly editing: { readonly settle: () => void; readonly canUndo: boolean; readonly undo: () => void }
  /** Where it leads once it is saved. */
  readonly links: ReactNode
  /** Said in their place before. */
  readonly hint: string
  /** What is asked before it is sent. */
  readonly children?: ReactNode
}

/** Keeps what was made, or takes the last change of it back. */
export function SavePlan(props: SavePlanProps) {
  const { what, json, isSaved, again, save, editing, links, hint, children } = props
  const [reply, sendForm, isSaving] = useActionState(save, { status: 'idle' } as const)
  const savedWord = again === undefined ? 'Saved' : 'Save again'
  return (
    <form
      action={sendForm}
      onSubmit={editing.settle}
      className="space-y-3 border-t-2 border-rule-strong pt-4"
    >
      <div aria-live="polite">
        {reply.status === 'refused' && !isSaved ? (
          <Problems title={`Nothing was saved; the ${what} is still here`} problems={reply.problems} />
        ) : null}
        {reply.status === 'done' && isSaved ? <Notice tone="done">{reply.message}</Notice> : null}
      </div>
      {json ? <input type="hidden" name="json" value={json} /> : null}
      {children}
      <div className="flex flex-wrap items-center gap-3">
        <Button disabled={!json || isSaving || (isSaved && !again)}>
          {isSaving ? 'Saving …' : isSaved ? savedWord : `Save this ${what}`}
        </Button>
        <Button type="button" weight="plain" disabled={!editing.canUndo} onClick={editing.undo}>
          Undo
        </Button>
        {isSaved ? links : <span className="text-sm text-soft">{hint}</span>}
      </div>
    </form>
  )
}
