'use client'

import { type FormEvent, useRef, useState } from 'react'
import { leave } from '#server/sign-in-actions'
import { SignOut } from '#ui/pitch/sign-out'

/** Signs out, and takes the practices off this phone first; what is not sent yet is asked about. */
export function LeaveForm() {
  const form = useRef<HTMLFormElement>(null)
  const isForgotten = useRef(false)
  const [unsent, setUnsent] = useState(0)

  const forgetAndGo = async () => {
    const { forgetPhone } = await import('#app/pitch/leave-phone')
    // A phone that keeps nothing has nothing to forget: signing out must work all the same.
    await forgetPhone().catch(() => undefined)
    isForgotten.current = true
    form.current?.requestSubmit()
  }
  const guard = async (event: FormEvent) => {
    if (isForgotten.current) return
    event.preventDefault()
    const { tapsOnlyHere } = await import('#app/pitch/leave-phone')
    const count = await tapsOnlyHere().catch(() => 0)
    if (count > 0) setUnsent(count)
    else await forgetAndGo()
  }
  return (
    <form ref={form} action={leave} onSubmit={guard}>
      <SignOut unsent={unsent} onLose={forgetAndGo} onStay={() => setUnsent(0)} />
    </form>
  )
}
