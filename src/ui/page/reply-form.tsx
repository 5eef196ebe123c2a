'use client'

import { type FormEvent, type ReactNode, startTransition, useActionState } from 'react'
import type { SendForm, SendReply } from '#ui/entry/send-form'
import { Notice } from '#ui/page/notice'
import { Problems } from '#ui/page/problems'

type ReplyFormProps = {
  readonly send: SendForm
  /** What a refusal is headed by: "Not saved". */
  readonly refusedTitle: string
  /** Labels of the fields by name, for what is said of them. */
  readonly places?: Readonly<Record<string, string>>
  /** Said while it is on its way. */
  readonly waiting: string
  readonly className?: string
  /**
   * Fields and buttons; the name and value of the button that was pressed are sent with them. A function where they
   * depend on the answer.
   */
  readonly children: ReactNode | ((reply: SendReply) => ReactNode)
}

/** A form that says what came of it and keeps what was typed when it is refused. Works without a script too. */
export function ReplyForm({ send, refusedTitle, places, waiting, className, children }: ReplyFormProps) {
  const [reply, sendForm, isPending] = useActionState(send, { status: 'idle' })
  const submit = (event: FormEvent<HTMLFormElement>) => {
    // Sent from here and not by React, which would empty the fields afterwards, refused or not.
    event.preventDefault()
    if (isPending) return
    const native = event.nativeEvent
    const submitter = native instanceof SubmitEvent ? native.submitter : null
    const form = new FormData(event.currentTarget, submitter)
    startTransition(() => sendForm(form))
  }
  return (
    <form action={sendForm} onSubmit={submit} aria-busy={isPending} className={className}>
      {typeof children === 'function' ? children(reply) : children}
      <div aria-live="polite" className="mt-2 empty:mt-0">
        {isPending ? <p className="text-soft">{waiting}</p> : null}
        {!isPending && reply.status === 'done' ? <Notice tone="done">{reply.message}</Notice> : null}
        {!isPending && reply.status === 'refused' ? (
          <Problems title={refusedTitle} problems={reply.problems} places={places} />
        ) : null}
      </div>
    </form>
  )
}
