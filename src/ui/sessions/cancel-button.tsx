'use client'

import { useActionState, useState } from 'react'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Problems } from '#ui/page/problems'

type CancelButtonProps = { readonly squadId: string; readonly sessionId: string; readonly send: SendForm }

/** A session that was not held; asks first. */
export function CancelButton({ squadId, sessionId, send }: CancelButtonProps) {
  const [isAsking, setIsAsking] = useState(false)
  const [reply, sendForm, isSaving] = useActionState(send, { status: 'idle' } as const)
  if (!isAsking) {
    return (
      <Button type="button" weight="plain" onClick={() => setIsAsking(true)}>
        It was cancelled
      </Button>
    )
  }
  return (
    <form
      action={sendForm}
      className="flex flex-wrap items-center gap-3 border-2 border-warn bg-warn-pale p-3"
    >
      <input type="hidden" name="squadId" value={squadId} />
      <input type="hidden" name="sessionId" value={sessionId} />
      <p className="font-medium">Cancelled: it counts for nothing, and this cannot be taken back. Sure?</p>
      <Button disabled={isSaving}>Yes, it was cancelled</Button>
      <Button type="button" weight="plain" onClick={() => setIsAsking(false)}>
        No
      </Button>
      {reply.status === 'refused' ? <Problems title="Nothing was saved" problems={reply.problems} /> : null}
    </form>
  )
}
