'use client'

import { useEffect, useState } from 'react'
import { UnsentNotice } from '#ui/pitch/sign-out'

/**
 * On the first page with nobody signed in: no practice stays on this phone but one with taps that are not sent. Whoever
 * signed out before the page could ask, or whose sign-in ran out, leaves no names behind.
 */
export function SignedOut() {
  const [unsent, setUnsent] = useState(0)
  useEffect(() => {
    // A browser that keeps nothing has nothing to forget.
    forgetUnlessUnsent().then(setUnsent, () => undefined)
  }, [])
  return <UnsentNotice unsent={unsent} />
}

async function forgetUnlessUnsent(): Promise<number> {
  const { forgetPhone, hasPractices, tapsOnlyHere } = await import('#app/pitch/leave-phone')
  if (!(await hasPractices())) return 0
  const unsent = await tapsOnlyHere()
  if (unsent === 0) await forgetPhone()
  return unsent
}
